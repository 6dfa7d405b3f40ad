#include "plan/fill/water_area.h"

#include <algorithm>

#include "check/build.h"
#include "plan/fill/constants.h"
#include "plan/fill/fill.h"
#include "plan/fill/ground.h"
#include "plan/fill/water_density.h"

namespace loamsheet {
namespace {

// The x along which the dam stands, a hair inside of the water, whose very edge meets no line.
double dam_at(const Build& build, const Ground& ground) {
  constexpr double hair = 1e-3;  // mm
  const Box box = extent(ground.water);
  return build.water_area->side == WaterArea::Side::left ? box.right - hair : box.left + hair;
}

// What pushes a background up that is lighter than the water in front of which it stands.
std::optional<Kilograms> uplift(const Build& build, const Ground& ground) {
  const auto& background = build.enclosure.background;
  const auto water = water_density(constants::room);
  if (!background || !background->density || *background->density >= water) return std::nullopt;
  const Millimetres length{extent(ground.water).width()};
  const Litres under =
      volume(SquareMetres{length.v * background->thickness.v / 1e6}, build.water_area->depth);
  return mass(under, water - *background->density);
}

}  // namespace

std::optional<WaterAreaPlan> plan_water_area(const Build& build, const LayersPlan& layers) {
  if (!build.water_area) return std::nullopt;
  const Ground parts = ground(build);
  const Millimetres depth = build.water_area->depth;
  const Profile& p = layers.profile;
  WaterAreaPlan plan;
  plan.volume = water_in_area(build, parts);
  if (const auto reach = reach_at(parts.water, dam_at(build, parts))) {
    plan.dam_length = reach->high - reach->low;
  }
  plan.dam_height =
      std::max(depth + constants::dam_freeboard, p.drainage_top + deepest(build.layers.substrate));
  const Dam& dam = build.water_area->dam;
  const SquareMetres panel{plan.dam_length.v * plan.dam_height.v / 1e6};
  plan.dam = mass(volume(panel, dam.thickness), dam.density);
  const double metres = depth.v / 1000;
  const double weight = water_density(constants::room).v * constants::gravity;  // N/m3
  const Box box = extent(parts.water);
  const double pane = std::max(box.width(), box.height()) / 1000;
  plan.pane_load_n = weight * metres * metres / 2 * pane;
  plan.floor_pressure_kpa = weight * metres / 1000;
  plan.uplift = uplift(build, parts);
  return plan;
}

}  // namespace loamsheet
