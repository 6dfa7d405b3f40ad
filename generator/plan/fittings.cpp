#include "plan/fittings.h"

#include <algorithm>
#include <cmath>

#include "check/build.h"
#include "plan/constants.h"
#include "plan/fixing.h"
#include "plan/goods_constants.h"
#include "plan/ground.h"
#include "plan/layers.h"
#include "plan/plan.h"
#include "plan/water_density.h"

namespace loamsheet {
namespace {

KilogramsPerCubicMetre wet_density(const Bulk& bulk) {
  return bulk.dry_density.high + bulk.field_capacity.v * water_density(constants::room);
}

KilogramsPerCubicMetre wet_mix(const SubstrateLayer& substrate) {
  KilogramsPerCubicMetre sum{};
  for (const SubstratePart& part : substrate.parts) sum += wet_density(part.bulk) * part.share.v;
  return sum;
}

Kilograms above_the_floor(const Build& build, const LayersPlan& plan) {
  Kilograms sum = mass(plan.substrate.volume, wet_mix(build.layers.substrate));
  if (plan.litter) sum += mass(plan.litter->volume, wet_density(build.layers.litter->bulk));
  if (plan.moss) sum += mass(plan.moss->volume, wet_density(build.layers.moss->bulk));
  for (const Standing& thing : build.standing) {
    if (!thing.on_base) sum += thing.mass.value_or(Kilograms{});
  }
  return sum;
}

Kilograms heaviest_animal(const Build& build) {
  Kilograms most{};
  for (const KeptAnimal& animal : build.kept) {
    if (animal.facts.mass) most = std::max(most, animal.facts.mass->value.high);
    most = std::max(most, animal.mass.value_or(Kilograms{}));
  }
  return most;
}

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

std::optional<SupportsPlan> plan_supports(const Build& build, const LayersPlan& layers) {
  if (build.layers.drainage.kind != DrainageKind::raised_floor) return std::nullopt;
  const Box box = extent(ground(build).land);
  const auto along = [](double length) {
    return 1 + static_cast<int>(std::ceil(length / constants::support_spacing.v));
  };
  SupportsPlan plan;
  plan.spacing = constants::support_spacing;
  plan.count = along(box.width()) * along(box.height());
  plan.load = above_the_floor(build, layers) / plan.count;
  return plan;
}

std::vector<FixedLoad> plan_fixed(const Build& build) {
  std::vector<FixedLoad> all;
  const Kilograms landing = heaviest_animal(build) * constants::sudden_load;
  for (const Furnishing& thing : build.furnishings) {
    if (!is_held_up(thing)) continue;
    all.push_back({thing.id, thing.fixed_by, thing.mass,
                   mass(thing.pocket, wet_mix(build.layers.substrate)), landing});
  }
  return all;
}

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
