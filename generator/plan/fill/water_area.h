// water_area: what the water area holds, its dam, and what it presses on.
#pragma once
#include <optional>
#include <string>
#include <vector>

#include "base/units.h"

namespace loamsheet {

class FieldSink;
struct Build;
struct LayersPlan;

// The dam stands the freeboard above the water or as high as the land beside it, whichever is more.
// Water presses on a pane with rho g depth^2 / 2 on each metre (hydrostatics).
struct WaterAreaPlan {
  Litres volume;
  Millimetres dam_length, dam_height;
  Kilograms dam;
  double pane_load_n = 0;           // on the longest pane it stands against
  double floor_pressure_kpa = 0;    // at the floor
  std::optional<Kilograms> uplift;  // on a background lighter than water, below the surface
};
void fields(const WaterAreaPlan&, FieldSink&);
std::optional<WaterAreaPlan> plan_water_area(const Build&, const LayersPlan&);

}  // namespace loamsheet
