#include "plan/air/air.h"

#include <algorithm>

namespace loamsheet {
namespace {

// One end or both of what something bears.
struct Bears {
  std::optional<Celsius> coldest, warmest;
  std::optional<Fraction> driest, dampest;
};

OutsideBand outside(const AirState& air, const Bears& bears) {
  OutsideBand out;
  if (bears.coldest && air.temperature.low < *bears.coldest) out.coldest = air.temperature.low;
  if (bears.warmest && air.temperature.high > *bears.warmest) out.warmest = air.temperature.high;
  if (bears.driest && air.humidity.low < *bears.driest) out.driest = air.humidity.low;
  if (bears.dampest && air.humidity.high > *bears.dampest) out.dampest = air.humidity.high;
  return out;
}

ClimateFit fit(const std::string& name, const AirPlan& air, const Bears& day, const Bears& night) {
  return {name,
          {outside(air.winter.day, day), outside(air.winter.night, night),
           outside(air.summer.day, day), outside(air.summer.night, night)}};
}

template <class T>
std::optional<T> value(const Known<T>& fact) {
  return fact ? std::optional(fact->value) : std::nullopt;
}

Bears bears(const Known<Range<Celsius>>& heat, const Known<Range<Fraction>>& humidity) {
  Bears b;
  if (heat) b.coldest = heat->value.low, b.warmest = heat->value.high;
  if (humidity) b.driest = humidity->value.low, b.dampest = humidity->value.high;
  return b;
}

ClimateFit of_animal(const Animal& animal, const AirPlan& air) {
  return fit(animal.name, air, bears(animal.day, animal.humidity),
             bears(animal.night, animal.humidity));
}

}  // namespace

std::vector<ClimateFit> climate_fit(const Build& build, const AirPlan& air) {
  std::vector<ClimateFit> all;
  const auto add = [&](ClimateFit one) {
    const bool seen = std::any_of(all.begin(), all.end(),
                                  [&](const ClimateFit& other) { return other.name == one.name; });
    if (!seen) all.push_back(std::move(one));
  };
  for (const KeptAnimal& kept : build.kept) add(of_animal(kept.facts, air));
  for (const PlantUse& plant : build.plants) {
    const Bears b{value(plant.facts.coldest), value(plant.facts.warmest),
                  value(plant.facts.humidity), std::nullopt};
    add(fit(plant.facts.name, air, b, b));
  }
  for (const CrewUse& crew : build.crew) {
    const Bears b{value(crew.facts.coldest), value(crew.facts.warmest), std::nullopt, std::nullopt};
    add(fit(crew.facts.name, air, b, b));
  }
  return all;
}

}  // namespace loamsheet
