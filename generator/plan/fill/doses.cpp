#include "plan/fill/doses.h"

#include <cmath>

#include "check/build.h"
#include "plan/fill/constants.h"
#include "plan/fill/ground.h"
#include "plan/fill/quantities.h"

namespace loamsheet {
namespace {

SquareMetres land_area(const Build& build) {
  return area(ground(build).land);
}

DosePlan dose_of(const Build& build, const Amendment& amendment, Litres substrate) {
  const double base = amendment.by_area ? land_area(build).v : substrate.v;
  const double grams = amendment.rate * amendment.strength.v * base;
  DosePlan plan;
  plan.material = amendment.material;
  plan.dose = {grams / 1000};
  if (amendment.density && amendment.density->v > 0) {
    plan.teaspoons = plan.dose.v * 1000 / amendment.density->v / constants::teaspoon.v;
  }
  if (amendment.nitrogen && substrate.v > 0) {
    const double per_cent = amendment.nitrogen->v * 100;
    plan.nitrogen_mg_l = grams / substrate.v * per_cent * 10;
  }
  return plan;
}

double animals_of_culture(const CrewSpecies& species) {
  const std::string group = species.group ? species.group->value : "";
  if (group == "springtail") return constants::springtails_of_culture;
  if (group == "dwarf-isopod") return constants::dwarf_isopods_of_culture;
  return constants::crew_of_culture;
}

}  // namespace

std::vector<DosePlan> plan_doses(const Build& build, const LayersPlan& layers) {
  std::vector<DosePlan> all;
  for (const Amendment& amendment : build.amendments) {
    all.push_back(dose_of(build, amendment, layers.substrate.volume));
  }
  return all;
}

std::vector<CrewPlan> plan_crew(const Build& build) {
  std::vector<CrewPlan> all;
  const double floor = land_area(build).v;
  for (const CrewUse& crew : build.crew) {
    CrewPlan plan{crew.facts.id, crew.cultures, {}};
    if (const auto& density = crew.facts.density) {
      plan.suggested =
          static_cast<int>(std::ceil(floor * density->value.low / animals_of_culture(crew.facts)));
    }
    all.push_back(std::move(plan));
  }
  return all;
}

}  // namespace loamsheet
