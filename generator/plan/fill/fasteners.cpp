#include "plan/fill/fasteners.h"

#include <algorithm>
#include <cmath>

#include "plan/fill/ground.h"

namespace loamsheet {
namespace {

// What a background takes that is held by it.
double for_background(const FixingKind& fixing, const Enclosure& tank) {
  if (!tank.background || &*tank.background->fixed_by != &fixing) return 0;
  const double along = fixing.spacing > 0 ? background_area(tank).v / fixing.spacing : 0;
  return fixing.of_background + along;
}

// How many furnishings are held by it.
long held_by(const FixingKind& fixing, const Build& build) {
  const auto& things = build.furnishings;
  return std::count_if(things.begin(), things.end(), [&](const Furnishing& f) {
    return !f.stands && f.fixed_by && &**f.fixed_by == &fixing;
  });
}

// Metres of the dam's seams.
double seams(const std::optional<WaterAreaPlan>& water) {
  return water ? 2 * (water->dam_length + 2 * water->dam_height).v / 1000 : 0;
}

}  // namespace

SquareMetres background_area(const Enclosure& enclosure) {
  return {background_length(enclosure).v * enclosure.height.v / 1e6};
}

double fixing_needed(const FixingKind& fixing, const Build& build,
                     const std::optional<WaterAreaPlan>& water) {
  double sum = for_background(fixing, build.enclosure);
  sum += static_cast<double>(held_by(fixing, build)) * fixing.of_furnishing;
  if (fixing.seals) sum += seams(water);
  return fixing.whole ? std::ceil(sum * fixing.each) : sum * fixing.each;
}

bool background_cures(const Build& build) {
  const auto& background = build.enclosure.background;
  return background && background->fixed_by->cures;
}

bool is_held_up(const Furnishing& thing) {
  const bool place = !thing.kind->is_a_thing() && !thing.mass && !thing.fixed_by;
  return !thing.stands && !place;
}

bool bonded(const Furnishing& thing) {
  return !thing.stands && thing.fixed_by && (*thing.fixed_by)->cures;
}

bool anything_cures(const Build& build) {
  const auto& things = build.furnishings;
  return background_cures(build) || build.water_area ||
         std::any_of(things.begin(), things.end(), bonded);
}

}  // namespace loamsheet
