#include <algorithm>
#include <set>

#include "plan/air/findings_air.h"

namespace loamsheet {
namespace {

// What of the plants and the crew bears least: one finding tells of them all.
struct Tenderest {
  int kinds = 0;
  std::string name;
  Celsius limit{};
  Span where;
};

class Living {
 public:
  explicit Living(const AirPlan& air)
      : coldest_(std::min(air.winter.night.temperature.low, air.winter.day.temperature.low)),
        warmest_(std::max(air.summer.day.temperature.high, air.summer.night.temperature.high)) {}

  void add(const std::string& name, const Known<Celsius>& coldest, const Known<Celsius>& warmest,
           const Span& where) {
    if (!seen_.insert(name).second) return;
    if (coldest && coldest_ < coldest->value) {
      count(cold_, {0, name, coldest->value, where}, coldest->value > cold_.limit);
    }
    if (warmest && warmest_ > warmest->value) {
      count(warm_, {0, name, warmest->value, where}, warmest->value < warm_.limit);
    }
  }

  Found findings(const Build& build) const {
    Found all;
    if (cold_.kinds > 0) {
      all.push_back(with_mend(about(cold_, "living-too-cold", coldest_),
                              for_warmer_winter(build, cold_.limit, false), "heat-otherwise"));
    }
    if (warm_.kinds > 0) {
      all.push_back(with_mend(about(warm_, "living-too-warm", warmest_),
                              for_cooler_summer(build, warm_.limit), "cool-otherwise"));
    }
    return all;
  }

 private:
  static void count(Tenderest& all, Tenderest one, bool tenderer) {
    one.kinds = all.kinds + 1;
    if (all.kinds == 0 || tenderer) {
      all = std::move(one);
    } else {
      all.kinds = one.kinds;
    }
  }

  static Finding about(const Tenderest& t, const char* rule, Celsius is) {
    return {Weight::note,
            rule,
            t.where,
            {{"is", is}, {"kinds", t.kinds}, {"name", t.name}, {"limit", t.limit}}};
  }

  Celsius coldest_, warmest_;
  Tenderest cold_, warm_;
  std::set<std::string> seen_;
};

// The best that a plant meets by day in the drier season.
Fraction dampest_day(const AirPlan& air) {
  return std::min(air.winter.day.humidity.high, air.summer.day.humidity.high);
}

Found too_dry(const Build& build, const AirPlan& air) {
  const Fraction is = dampest_day(air);
  Found all;
  std::set<std::string> seen;
  for (const PlantUse& plant : build.plants) {
    const auto& least = plant.facts.humidity;
    if (!least || is >= least->value || !seen.insert(plant.facts.name).second) continue;
    all.push_back({Weight::caution,
                   "plant-air-dry",
                   plant.where,
                   {{"plant", plant.facts.name}, {"is", is}, {"least", least->value}}});
  }
  return all;
}

}  // namespace

Found planted_air_findings(const Build& build, const AirPlan& air) {
  Living living(air);
  for (const PlantUse& plant : build.plants) {
    living.add(plant.facts.name, plant.facts.coldest, plant.facts.warmest, plant.where);
  }
  for (const CrewUse& crew : build.crew) {
    living.add(crew.facts.name, crew.facts.coldest, crew.facts.warmest, crew.where);
  }
  Found all = living.findings(build);
  append(all, too_dry(build, air));
  return all;
}

}  // namespace loamsheet
