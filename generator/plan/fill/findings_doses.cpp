#include "check/build.h"
#include "plan/fill/fill.h"

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

Found thin_crew(const Build& build, const Filling& plan) {
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

}  // namespace

Found dose_findings(const Build& build, const Filling& plan) {
  Found all = over_strength(build);
  append(all, thin_crew(build, plan));
  return all;
}

}  // namespace loamsheet
