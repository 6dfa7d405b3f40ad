// layers: what fills the tank from the floor up, as checked.
#pragma once
#include <optional>
#include <string>
#include <vector>

#include "base/span.h"
#include "base/units.h"
#include "check/known.h"
#include "kinds/layer.h"
#include "kinds/one_of.h"

namespace loamsheet {

class FieldSink;

// A granular or fibrous material in a layer, with the constants that the plan needs.
struct Bulk {
  std::string material;
  Range<KilogramsPerCubicMetre> dry_density;
  Fraction voids;                          // drained free space
  Fraction field_capacity;                 // by volume
  Uncertain<Fraction> moisture_as_placed;  // by volume
};
void fields(const Bulk&, FieldSink&);

struct DrainageLayer {
  OneOf<DrainageKind> kind{"none"};
  Bulk bulk;  // of one that is poured
  Millimetres depth;
  OneOf<OutletKind> outlet{"none"};
  Span depth_at;
};
void fields(const DrainageLayer&, FieldSink&);

struct SeparatorLayer {
  std::string material;
  Millimetres turn_up;
  double areal_kg_m2 = 0;
  std::optional<Millimetres> roll_width{};  // as it is sold, where known
};
void fields(const SeparatorLayer&, FieldSink&);

struct SubstratePart {
  Bulk bulk;
  Fraction share;  // of the mix's volume; the shares sum to 1
};
void fields(const SubstratePart&, FieldSink&);

// From so far behind the front on, the substrate stands this deep, held by a stone or a ledge.
struct Terrace {
  Millimetres from, height;
  std::string held_by;  // id of a furnishing; may be empty
  Span where{};
};
void fields(const Terrace&, FieldSink&);

struct SubstrateLayer {
  std::string mix;
  std::string placed;  // dry | damp | ?
  std::vector<SubstratePart> parts;
  Millimetres front, back;
  Fraction settling, hold_back;
  Span front_at, back_at;
  std::vector<Terrace> terraces{};  // from the front; in front of the first it is level
};
void fields(const SubstrateLayer&, FieldSink&);

struct LitterLayer {
  Bulk bulk;
  Millimetres depth;
};
void fields(const LitterLayer&, FieldSink&);

// Dried moss over a share of the land, or over an area; the other is nothing.
struct MossLayer {
  Bulk bulk;
  Millimetres depth;
  std::optional<Fraction> floor;
  std::optional<SquareMetres> area;
  Span where{};
};
void fields(const MossLayer&, FieldSink&);

// The panel that holds the water of a water area back.
struct Dam {
  std::string material;
  Millimetres thickness;
  KilogramsPerCubicMetre density;
};

struct WaterArea {
  enum class Side { left, right } side = Side::left;
  Fraction floor;
  Millimetres depth;
  bool filter = false;
  Span where{};
  Dam dam{};
};
void fields(const WaterArea&, FieldSink&);

struct Layers {
  DrainageLayer drainage;
  std::optional<SeparatorLayer> separator;
  SubstrateLayer substrate;
  std::optional<LitterLayer> litter;
  std::optional<MossLayer> moss{};
  Fraction drainage_hold_back, litter_hold_back;  // held back of the other layers, too
};
void fields(const Layers&, FieldSink&);

}  // namespace loamsheet
