// habit: plants as a gardener sketches them, by the way they grow.
#pragma once
#include "figure/sketch.h"

namespace loamsheet {

struct PlantShape {
  std::string habit;      // of the catalogue: upright, fern, rosette, ...
  Point foot;             // paper mm
  double spread, height;  // paper mm
  bool hangs = false;     // grows down from its foot
  bool on_mount = false;  // fixed to a piece of bark
};

// The sketch. A habit that is not known is drawn as an upright plant.
Marks habit_sketch(const PlantShape&);

// The area the plant takes up: a dome over its foot, or hanging from it.
std::vector<Point> habit_outline(const PlantShape&);

}  // namespace loamsheet
