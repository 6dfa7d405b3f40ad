#include "plan/fill/supports.h"

#include <algorithm>
#include <cmath>

#include "check/build.h"
#include "plan/fill/constants.h"
#include "plan/fill/fasteners.h"
#include "plan/fill/ground.h"
#include "plan/fill/quantities.h"
#include "plan/fill/water_density.h"

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

}  // namespace

std::optional<SupportsPlan> plan_supports(const Build& build, const LayersPlan& layers) {
  if (!build.layers.drainage.kind->on_supports) return std::nullopt;
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

}  // namespace loamsheet
