// enclosure: the tank, its openings and its stand, as checked.
#pragma once
#include <optional>
#include <string>
#include <vector>

#include "base/geometry.h"
#include "base/span.h"
#include "base/units.h"
#include "kinds/fixing.h"
#include "kinds/one_of.h"
#include "kinds/opening.h"
#include "kinds/shape.h"
#include "kinds/wall.h"

namespace loamsheet {

class FieldSink;

struct Opening {
  std::string name;
  OneOf<OpeningKind> kind{};
  enum class Where { top, front, back, left, right } at = Where::top;
  std::optional<Millimetres> lower_edge;  // none for the top
  SquareMetres gross, free;
  bool mesh = false;
  std::optional<Millimetres> length;  // of a door, in the middle of its wall
  std::optional<Millimetres> gap;     // the widest round thing that passes; none: not known
  std::optional<Box> over;            // the part of the top it covers, x-y in mm
  Span where;
};
void fields(const Opening&, FieldSink&);

struct Background {
  std::string material;
  Millimetres thickness;
  OneOf<FixingKind> fixed_by{};
  std::optional<KilogramsPerCubicMetre> density{};  // of its material, where known
  Span where{};
};
void fields(const Background&, FieldSink&);

struct Walls {
  OneOf<WallMaterial> material;
  Millimetres thickness;
  KilogramsPerCubicMetre density;
  bool toughened_base = false;
};
void fields(const Walls&, FieldSink&);

struct Enclosure {
  OneOf<FloorShape> shape;
  Region footprint;                  // inside
  Millimetres width, depth, height;  // inside box
  Walls walls;
  Millimetres sill;  // 'infinite' is the height when nothing opens at a side
  std::vector<Opening> openings;
  std::optional<Background> background;  // along the back wall
  std::optional<Kilograms> stated_empty_mass;
  std::optional<Kilograms> stand_rating;
  std::optional<Millimetres> stand_height;  // of its top above the room's floor
  Span height_at, sill_at, stand_at;
};
void fields(const Enclosure&, FieldSink&);

}  // namespace loamsheet
