#include <algorithm>

#include "plan/air/air.h"
#include "plan/air/water_constants.h"
#include "plan/fill/constants.h"

namespace loamsheet {
namespace {

// Salts stay behind when water evaporates, and nothing washes them out of a closed tank. Where
// little is misted, little is left.
Found salty_water(const Build& build) {
  const bool salty = build.water_source == "tap" || build.water_source == "?";
  if (!salty) return {};
  return {{is_dry(build.kind) ? Weight::note : Weight::caution,
           "tap-water",
           build.water_source_at,
           {}}};
}

Found stuck_on(const Build& build, const UpkeepPlan& upkeep) {
  if (!upkeep.stuck_on_overflow || upkeep.stuck_on_overflow->v <= 0) return {};
  return {{Weight::caution,
           "mister-can-flood",
           build.misting->where,
           {{"tank", *build.misting->tank}, {"overflow", *upkeep.stuck_on_overflow}}}};
}

Found tiring(const Build& build, const UpkeepPlan& upkeep) {
  if (!upkeep.by_hand) return {};
  const auto longest =
      std::max_element(upkeep.days.begin(), upkeep.days.end(),
                       [](const WaterDay& a, const WaterDay& b) { return a.each < b.each; });
  if (longest == upkeep.days.end() || longest->each < constants::many_pulls) return {};
  return {{Weight::note,
           "misting-tires-the-hand",
           build.misting->where,
           {{"pulls", static_cast<int>(longest->each)}}}};
}

Found salts(const Build& build, const UpkeepPlan& upkeep) {
  if (!upkeep.flush_every) return {};
  return {{Weight::note, "salts-build-up", build.water_source_at, {{"days", *upkeep.flush_every}}}};
}

Found fogger(const Build& build) {
  if (!build.misting || !build.misting->fogger) return {};
  return {{Weight::caution, "fogger", build.misting->where, {}}};
}

// What to draw off where the days to come bring the water over the level that wants a look.
Found high_water(const Build& build, const Climate& plan) {
  if (!plan.layers.drainage || plan.layers.drainage->voids.v <= 0) return {};
  const auto& days = plan.upkeep->days;
  const auto first = std::find_if(days.begin(), days.end(), [](const WaterDay& day) {
    return day.standing > constants::high_water;
  });
  if (first == days.end()) return {};
  const auto highest = std::max_element(
      first, days.end(),
      [](const WaterDay& a, const WaterDay& b) { return a.standing < b.standing; });
  const double a_millimetre = plan.layers.drainage->voids.v / build.layers.drainage.depth.v;
  return {{Weight::note,
           "high-water",
           build.layers.drainage.depth_at,
           {{"day", first->day},
            {"standing", first->standing},
            {"highest", highest->standing},
            {"amount", Litres{highest->standing.v * a_millimetre}}}}};
}

}  // namespace

Found water_findings(const Build& build, const Climate& plan) {
  Found all = salty_water(build);
  append(all, fogger(build));
  if (!plan.upkeep) return all;
  append(all, stuck_on(build, *plan.upkeep));
  append(all, tiring(build, *plan.upkeep));
  append(all, salts(build, *plan.upkeep));
  append(all, high_water(build, plan));
  return all;
}

}  // namespace loamsheet
