// build: the spec joined to the catalogue - typed, resolved, defaults filled. The value that
// `check` gives and `plan` takes.
#pragma once
#include <optional>
#include <string>
#include <vector>

#include "base/date.h"
#include "base/geometry.h"
#include "base/span.h"
#include "base/units.h"

namespace loamsheet {

// A value that may not be known. `unknown` is its position in Build::unknowns, -1 when it is known.
template <class T>
struct Uncertain {
  Range<T> range;
  int unknown = -1;
};

struct UnknownInput {
  std::string key;        // "layers.substrate.placed"
  Span where;
  std::string from;       // whose range stands in: a profile with its revision, or "catalogue"
  std::string shown;      // that range in words of the spec: "dry–damp", "35–60 %"
  bool used = true;       // false: nothing is computed from this key yet
};

// A value that the spec did not state itself.
struct Assumed {
  std::string key, value, from;   // from: "humid-sloped, revision 2" or "default" or "catalogue"
};

struct NotUsedYet {
  std::string key;
  Span where;
};

enum class BuildKind { humid, temperate, arid, burrowing, semi_aquatic };

struct Identity {
  std::string title, reference, revision;
  Date plant_on;
  bool moved = false;                       // built in the shop, then moved
  std::optional<Date> moves_on;             // the day of that move, when it is fixed
  std::string prepared_by, customer;        // may be empty
};

struct Shop {
  std::string name, contact;                // may be empty
};

struct Print {
  bool letter = false, us_units = false, large = false;
  std::string language = "en";
};

enum class Shape { rectangle, bow_front, corner, hexagon, round, outline };

struct Opening {
  std::string name;
  enum class Where { top, front, back, left, right } at = Where::top;
  std::optional<Millimetres> lower_edge;    // none for the top
  SquareMetres gross, free;
  bool door = false, mesh = false;
  std::optional<Box> over;                  // the part of the top it covers, x-y in mm
  Span where;
};



struct Background {
  std::string material;
  Millimetres thickness;
};

struct Walls {
  std::string material;                     // glass | acrylic | pvc | wood
  Millimetres thickness;
  KilogramsPerCubicMetre density;
  bool toughened_base = false;
};

struct Enclosure {
  Shape shape = Shape::rectangle;
  Region footprint;                         // inside
  Millimetres width, depth, height;         // inside box
  Walls walls;
  Millimetres sill;                         // 'infinite' is the height when nothing opens at a side
  std::vector<Opening> openings;
  std::optional<Background> background;     // along the back wall
  std::optional<Kilograms> stated_empty_mass;
  std::optional<Kilograms> stand_rating;
  Span height_at, sill_at, stand_at;
};

// A granular or fibrous material in a layer, with the constants that the plan needs.
struct Bulk {
  std::string material;
  Range<KilogramsPerCubicMetre> dry_density;
  Fraction voids;                           // drained free space
  Fraction field_capacity;                  // by volume
  Uncertain<Fraction> moisture_as_placed;   // by volume
};

enum class DrainageKind { none, granules, raised_floor };

struct DrainageLayer {
  DrainageKind kind = DrainageKind::none;
  Bulk bulk;                                // of the granules
  Millimetres depth;
  std::string outlet;                       // siphon-tube | port | none
  Span depth_at;
};

struct SeparatorLayer {
  std::string material;
  Millimetres turn_up;
  double areal_kg_m2 = 0;
};

struct SubstratePart {
  Bulk bulk;
  Fraction share;                           // of the mix's volume; the shares sum to 1
};

struct SubstrateLayer {
  std::string mix;
  std::string placed;                       // dry | damp | ?
  std::vector<SubstratePart> parts;
  Millimetres front, back;
  Fraction settling, hold_back;
  Span front_at, back_at;
};

struct LitterLayer {
  Bulk bulk;
  Millimetres depth;
};

struct WaterArea {
  enum class Side { left, right } side = Side::left;
  Fraction floor;
  Millimetres depth;
};

struct Layers {
  DrainageLayer drainage;
  std::optional<SeparatorLayer> separator;
  SubstrateLayer substrate;
  std::optional<LitterLayer> litter;
  Fraction drainage_hold_back, litter_hold_back;   // held back of the other layers, too
};

// A solid thing that takes up room in the layers because it stands on the base.
struct Standing {
  std::string id;
  Point at;
  SquareMetres base;
  Millimetres height;
  std::optional<Kilograms> mass;
  bool on_base = false;
  Span where;
};

struct NamedCount {
  std::string id;                           // species
  int count = 1;
  Span where;
};

struct Build {
  std::string spec_file;
  Identity identity;
  Shop shop;
  Print print;
  BuildKind kind = BuildKind::humid;
  Enclosure enclosure;
  Layers layers;
  std::optional<WaterArea> water_area;
  std::vector<Standing> standing;
  std::vector<NamedCount> animals;
  std::vector<UnknownInput> unknowns;
  std::vector<Assumed> assumed;
  std::vector<NotUsedYet> not_used;
};

}  // namespace loamsheet
