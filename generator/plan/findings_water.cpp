#include <algorithm>

#include "plan/constants.h"
#include "plan/findings.h"

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

}  // namespace

Found water_findings(const Build& build, const Plan& plan) {
  Found all = salty_water(build);
  if (!plan.upkeep) return all;
  for (const Found& found : {stuck_on(build, *plan.upkeep), tiring(build, *plan.upkeep)}) {
    all.insert(all.end(), found.begin(), found.end());
  }
  return all;
}

}  // namespace loamsheet
