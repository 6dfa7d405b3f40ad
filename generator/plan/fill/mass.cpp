#include "plan/fill/mass.h"

#include <vector>

#include "plan/fill/constants.h"
#include "plan/fill/water_density.h"

namespace loamsheet {
namespace {

// An amount of a material that lies in the tank.
struct Laid {
  const Bulk& bulk;
  Litres amount;
};

std::vector<Laid> laid(const Build& build, const LayersPlan& plan) {
  std::vector<Laid> all;
  if (plan.drainage && build.layers.drainage.kind->poured) {
    all.push_back({build.layers.drainage.bulk, plan.drainage->volume});
  }
  for (size_t i = 0; i < plan.substrate.parts.size(); ++i) {
    const SubstratePart& part = build.layers.substrate.parts[i];
    const Litres in_pockets = plan.substrate.pockets * part.share.v;
    all.push_back({part.bulk, plan.substrate.parts[i].volume + in_pockets});
  }
  if (plan.litter) all.push_back({build.layers.litter->bulk, plan.litter->volume});
  if (plan.moss) all.push_back({build.layers.moss->bulk, plan.moss->volume});
  return all;
}

KilogramsPerCubicMetre density_at(const Bulk& bulk, const Scenario& scenario) {
  return bulk.dry_density.low + (bulk.dry_density.high - bulk.dry_density.low) * scenario.density;
}

// What the layers hold at field capacity.
Litres held_water(const Build& build, const LayersPlan& plan) {
  Litres water{};
  for (const Laid& layer : laid(build, plan)) water += layer.amount * layer.bulk.field_capacity.v;
  return water;
}

Kilograms separator_mass(const Build& build, const LayersPlan& plan) {
  return plan.separator ? Kilograms{plan.separator->area.v * build.layers.separator->areal_kg_m2}
                        : Kilograms{};
}

}  // namespace

Kilograms empty_mass(const Enclosure& enclosure) {
  if (enclosure.stated_empty_mass) return *enclosure.stated_empty_mass;
  const SquareMetres walls{perimeter(enclosure.footprint).v * enclosure.height.v / 1e6};
  const Litres material = volume(walls + area(enclosure.footprint), enclosure.walls.thickness);
  return mass(material, enclosure.walls.density);
}

Kilograms dry_mass(const Build& build, const Decisions& decisions, const Scenario& scenario) {
  Kilograms sum = decisions.empty + decisions.dam + separator_mass(build, decisions.layers);
  for (const Laid& layer : laid(build, decisions.layers)) {
    sum += mass(layer.amount, density_at(layer.bulk, scenario));
  }
  for (const Standing& thing : build.standing) sum += thing.mass.value_or(Kilograms{});
  for (const Furnishing& thing : build.furnishings) {
    if (!thing.stands) sum += thing.mass.value_or(Kilograms{});
  }
  return sum;
}

Kilograms wet_mass(const Build& build, const Decisions& decisions, const Scenario& scenario,
                   Litres standing) {
  const Litres water = standing + decisions.water_area + held_water(build, decisions.layers);
  return dry_mass(build, decisions, scenario) + mass(water, water_density(constants::room));
}

bool loose_stone(const Standing& thing) {
  return thing.kind->loose_weight;
}

Kilograms moved_mass(const Build& build, const Decisions& decisions, const Scenario& scenario) {
  const Litres water = held_water(build, decisions.layers);
  Kilograms sum =
      dry_mass(build, decisions, scenario) + mass(water, water_density(constants::room));
  for (const Standing& thing : build.standing) {
    if (loose_stone(thing)) sum -= thing.mass.value_or(Kilograms{});
  }
  return sum;
}

}  // namespace loamsheet
