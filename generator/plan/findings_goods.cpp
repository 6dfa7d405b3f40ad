#include "plan/conditions.h"
#include "plan/constants.h"
#include "plan/findings.h"
#include "plan/fixing.h"
#include "plan/goods_constants.h"

namespace loamsheet {
namespace {

Found over_strength(const Build& build) {
  Found found;
  for (const Amendment& amendment : build.amendments) {
    if (amendment.strength.v <= 1) continue;
    found.push_back({Weight::stop,
                     "amendment-over-strength",
                     amendment.where,
                     {{"material", amendment.material}, {"strength", amendment.strength}}});
  }
  return found;
}

Found thin_crew(const Build& build, const Plan& plan) {
  Found found;
  for (size_t i = 0; i < plan.crew.size(); ++i) {
    const CrewPlan& crew = plan.crew[i];
    if (!crew.suggested || crew.given >= *crew.suggested) continue;
    found.push_back({Weight::note,
                     "crew-thin",
                     build.crew[i].where,
                     {{"crew", build.crew[i].facts.name},
                      {"given", crew.given},
                      {"suggested", *crew.suggested}}});
  }
  return found;
}

Found water_area(const Build& build, const Plan& plan) {
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

Found fixings(const Build& build, const Plan& plan) {
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

// A stone that is undermined falls on who digs under it: a stop when it is heavy; of a lighter one
// the rules of the animal's fit speak.
Found heavy_stones(const Build& build) {
  Found found;
  const bool dug = condition_holds("digging-animal", build);
  const Kilograms limit = dug ? constants::heavy_stone_digging : constants::heavy_stone;
  for (const Standing& thing : build.standing) {
    const bool loose = thing.kind == "stone" && !thing.on_base && thing.mass;
    if (!loose || *thing.mass < limit) continue;
    found.push_back({dug ? Weight::stop : Weight::caution,
                     dug ? "stone-over-digger" : "stone-on-substrate",
                     thing.where,
                     {{"thing", thing.id}, {"mass", *thing.mass}, {"limit", limit}}});
  }
  return found;
}

Found heavy_sack(const Build& build, const Plan& plan) {
  if (!plan.sack || plan.sack->people == 1) return {};
  return {
      {Weight::note,
       "sack-heavy",
       build.stock_at,
       {{"material", plan.sack->item}, {"mass", plan.sack->mass}, {"limit", plan.sack->limit}}}};
}

}  // namespace

Found goods_findings(const Build& build, const Plan& plan) {
  Found all;
  for (const Found& found : {over_strength(build), thin_crew(build, plan), water_area(build, plan),
                             fixings(build, plan), heavy_stones(build), heavy_sack(build, plan)}) {
    all.insert(all.end(), found.begin(), found.end());
  }
  return all;
}

}  // namespace loamsheet
