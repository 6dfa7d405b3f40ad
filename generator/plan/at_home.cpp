#include "plan/at_home.h"

#include <algorithm>

namespace loamsheet {
namespace {

// A plant that grows to within this much of the coldest night or the warmest day is at its limit.
// From memory.
constexpr double warmth_to_spare = 3;  // K

// Nights this much warmer than a plant can bear are no winter; from there on it is less at home
// with each degree. From memory.
constexpr double no_winter = 15, never_winter = 30;  // K

// The least air that a plant wants lies so far under that of its home; air damper than that by
// this much is strange to it. From memory.
constexpr double over_least = 0.15, strange_air = 0.40;

double share(double part) {
  return std::clamp(part, 0.0, 1.0);
}

template <class T>
double middle(const Range<T>& range) {
  return (range.low.v + range.high.v) / 2;
}

double in_warmth(const Animal& animal, const Plant& plant) {
  double home = 1;
  if (animal.night && plant.coldest) {
    const double spare = animal.night->value.low.v - plant.coldest->value.v;
    const double winterless = (spare - no_winter) / (never_winter - no_winter);
    home = std::min(share(spare / warmth_to_spare), 1 - 0.5 * share(winterless));
  }
  if (animal.day && plant.warmest) {
    const double spare = plant.warmest->value.v - middle(animal.day->value);
    home = std::min(home, share(spare / warmth_to_spare));
  }
  return home;
}

double in_air(const Animal& animal, const Plant& plant) {
  if (!animal.humidity || !plant.humidity) return 1;
  const double air = middle(animal.humidity->value), home = plant.humidity->value.v + over_least;
  return 1 - share((air > home ? air - home : home - over_least - air) / strange_air);
}

}  // namespace

double at_home(const Build& build, const Plant& plant) {
  double home = 1;
  for (const KeptAnimal& animal : build.kept) {
    const double here = (in_warmth(animal.facts, plant) + in_air(animal.facts, plant)) / 2;
    home = std::min(home, here);
  }
  return home;
}

}  // namespace loamsheet
