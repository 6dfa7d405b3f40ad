#include "plan/fill/first_watering.h"
#include "plan/fill/constants.h"

#include <algorithm>

namespace loamsheet {
namespace {

Fraction moisture_at(const Uncertain<Fraction>& moisture, const Scenario& scenario) {
  const double place =
      moisture.unknown < 0 ? scenario.moisture : scenario.at[static_cast<size_t>(moisture.unknown)];
  return moisture.range.low + (moisture.range.high - moisture.range.low) * place;
}

}  // namespace

bool watered_through(const Build& build) {
  return build.kind != BuildKind::arid;
}

Litres field_capacity_deficit(const Build& build, const Decisions& decisions,
                              const Scenario& scenario) {
  Litres sum{};
  const SubstratePlan& substrate = decisions.layers.substrate;
  for (size_t i = 0; i < substrate.parts.size(); ++i) {
    const Bulk& bulk = build.layers.substrate.parts[i].bulk;
    const Fraction missing = bulk.field_capacity - moisture_at(bulk.moisture_as_placed, scenario);
    const Litres in_pockets = substrate.pockets * build.layers.substrate.parts[i].share.v;
    sum += (substrate.parts[i].volume + in_pockets) * std::max(0.0, missing.v);
  }
  return sum;
}

Litres run_through(const Build& build, Litres deficit) {
  const bool drains = build.layers.drainage.kind->keeps_water_off;
  return drains ? deficit * constants::runs_through.v : Litres{};
}

Millimetres standing_level(const Build& build, const LayersPlan& plan, Litres drained) {
  if (!plan.drainage || plan.drainage->voids.v <= 0) return {};
  return build.layers.drainage.depth * (drained / plan.drainage->voids);
}

std::optional<Millimetres> highest_standing(const Build& build) {
  const DrainageLayer& drainage = build.layers.drainage;
  if (!drainage.kind->keeps_water_off) return std::nullopt;
  return std::max(Millimetres{}, drainage.depth - constants::air_gap);
}

}  // namespace loamsheet
