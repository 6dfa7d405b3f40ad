#include "check/build.h"
#include "plan/fill/constants.h"
#include "plan/fill/fasteners.h"
#include "plan/fill/fill.h"

namespace loamsheet {
namespace {

Found water_area(const Build& build, const Filling& plan) {
  Found found;
  if (!plan.water_area) return found;
  if (build.water_area->filter) {
    found.push_back({Weight::caution, "filter-electricity", build.water_area->where, {}});
  }
  if (plan.water_area->uplift && !background_cures(build) &&
      build.enclosure.background->fixed_by != "screws") {
    found.push_back({Weight::caution,
                     "background-may-float",
                     build.enclosure.background->where,
                     {{"uplift", *plan.water_area->uplift}}});
  }
  return found;
}

Found fixings(const Build& build, const Filling& plan) {
  Found found;
  size_t next = 0;
  for (const Furnishing& thing : build.furnishings) {
    if (!is_held_up(thing)) continue;
    const FixedLoad& load = plan.fixed[next++];
    if (thing.fixed_by.empty()) {
      found.push_back({Weight::note, "fixing-not-stated", thing.where, {{"thing", thing.id}}});
    }
    if (thing.fixed_by == "magnet" && load.sum() > constants::magnet_holds) {
      found.push_back(
          {Weight::caution,
           "magnet-overloaded",
           thing.where,
           {{"thing", thing.id}, {"load", load.sum()}, {"limit", constants::magnet_holds}}});
    }
    if (!thing.mass) {
      found.push_back({Weight::note, "mass-not-stated", thing.where, {{"thing", thing.id}}});
    }
  }
  return found;
}

}  // namespace

Found fixing_findings(const Build& build, const Filling& plan) {
  Found all = water_area(build, plan);
  append(all, fixings(build, plan));
  return all;
}

}  // namespace loamsheet
