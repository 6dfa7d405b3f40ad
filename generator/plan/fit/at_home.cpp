#include "plan/fit/at_home.h"

#include <algorithm>

#include "plan/fit/constants.h"
#include "plan/light/vectors.h"

namespace loamsheet {
namespace {

template <class T>
double middle(const Range<T>& range) {
  return (range.low.v + range.high.v) / 2;
}

double in_warmth(const Animal& animal, const Plant& plant, const ClimateRules& rules) {
  double home = 1;
  if (animal.night && plant.coldest) {
    const double spare = animal.night->value.low.v - plant.coldest->value.v;
    const double never = (spare - rules.no_winter) / (rules.never_winter - rules.no_winter);
    home = std::min(share(spare / rules.warmth_to_spare), 1 - 0.5 * share(never));
  }
  if (animal.day && plant.warmest) {
    const double spare = plant.warmest->value.v - middle(animal.day->value);
    home = std::min(home, share(spare / rules.warmth_to_spare));
  }
  return home;
}

// Damp air over dry ground rots nothing.
double in_air(const Animal& animal, const Plant& plant, const Build& build) {
  if (!animal.humidity || !plant.humidity) return 1;
  const ClimateRules& rules = build.choosing.climate;
  const double air = middle(animal.humidity->value), least = plant.humidity->value.v;
  const double damp = is_dry(build.kind) ? 0 : air - least - rules.over_least;
  return 1 - share(std::max(damp, least - air) / rules.strange_air);
}

std::string ground_of(BuildKind kind, const Animal& animal) {
  if (is_dry(kind)) return "dry";
  const bool damp = animal.humidity && middle(animal.humidity->value) >= constants::bog_air.v;
  return kind != BuildKind::temperate || damp ? "damp" : "between";
}

// What grows on wood.
bool epiphytic(const Plant& plant) {
  if (!plant.mountable || !plant.mountable->value || !plant.habit) return false;
  const std::string& habit = plant.habit->value;
  return habit == "epiphyte" || habit == "bromeliad" || habit == "orchid";
}

// What grows on wood asks nothing of the ground.
double in_ground(const std::string& ground, const Plant& plant, const ClimateRules& rules) {
  const auto found = rules.ground.find(ground);
  if (found == rules.ground.end() || !plant.moisture || epiphytic(plant)) return 1;
  const auto here = found->second.find(plant.moisture->value);
  return here == found->second.end() ? 1 : here->second;
}

}  // namespace

double at_home(const Build& build, const Plant& plant) {
  const ClimateRules& rules = build.choosing.climate;
  double home = 1;
  for (const KeptAnimal& kept : build.kept) {
    const Animal& animal = kept.facts;
    const double sum = in_warmth(animal, plant, rules) + in_air(animal, plant, build) +
                       in_ground(ground_of(build.kind, animal), plant, rules);
    home = std::min(home, sum / 3);
  }
  return home;
}

}  // namespace loamsheet
