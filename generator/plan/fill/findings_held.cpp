#include "check/build.h"
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
  if (plan.water_area->uplift && !build.enclosure.background->fixed_by->stays_under_water) {
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
    if (!thing.fixed_by) {
      found.push_back({Weight::note, "fixing-not-stated", thing.where, {{"thing", thing.id}}});
    }
    const auto limit = thing.fixed_by ? (*thing.fixed_by)->holds : std::nullopt;
    if (limit && load.sum() > *limit) {
      found.push_back({Weight::caution,
                       "magnet-overloaded",
                       thing.where,
                       {{"thing", thing.id}, {"load", load.sum()}, {"limit", *limit}}});
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
