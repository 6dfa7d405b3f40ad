#include <algorithm>
#include <cmath>

#include "plan/air/constants.h"
#include "plan/air/findings_air.h"

namespace loamsheet {
namespace {

int watts_of(double watts) {
  return static_cast<int>(std::lround(watts));
}

Found heaters(const Build& build, const HeatPlan& heat, const AirPlan& air) {
  Found all;
  double watts = 0;
  for (const Heater& heater : build.heaters) {
    watts += heater.power;
    if (heater.thermostat) continue;
    all.push_back(
        {Weight::caution, "no-thermostat", heater.where, {{"power", watts_of(heater.power)}}});
  }
  if (build.heaters.empty() || !heat.needed_night || *heat.needed_night <= watts) return all;
  all.push_back({Weight::caution,
                 "heater-too-weak",
                 build.heaters.front().where,
                 {{"needed", watts_of(*heat.needed_night)},
                  {"fitted", watts_of(watts)},
                  {"is", air.winter.night.temperature}}});
  return all;
}

// A winter day without power. An animal bears a night that is cool for once, not a cold one.
Found power_cut(const HeatPlan& heat, const KeptAnimal& animal) {
  const auto& night = animal.facts.night;
  if (!night || heat.all_off.low >= night->value.low) return {};
  const bool cold = heat.all_off.low < night->value.low - constants::cool_for_once;
  return {{cold ? Weight::caution : Weight::note,
           "power-cut-cold",
           animal.where,
           {{"animal", animal.facts.name}, {"is", heat.all_off}, {"band", night->value}}}};
}

// A thermostat that sticks on a summer day, with the lamps lit.
Found thermostat_fails(const Build& build, const HeatPlan& heat, const KeptAnimal& animal) {
  const auto& warmest = animal.facts.warmest;
  const auto held = std::find_if(build.heaters.begin(), build.heaters.end(),
                                 [](const Heater& heater) { return heater.thermostat; });
  if (held == build.heaters.end() || !warmest || heat.all_on.high <= warmest->value) return {};
  const bool surely = heat.all_on.low > warmest->value;
  return {{surely ? weight_of_heat(build, warmest->origin) : Weight::caution,
           "thermostat-fails-hot",
           held->where,
           {{"animal", animal.facts.name},
            {"is", heat.all_on},
            {"limit", warmest->value},
            {"by", heat.all_on.high - warmest->value}}}};
}

}  // namespace

Found heat_findings(const Build& build, const HeatPlan& heat, const AirPlan& air) {
  Found all = heaters(build, heat, air);
  for (const KeptAnimal& animal : build.kept) {
    append(all, power_cut(heat, animal));
    append(all, thermostat_fails(build, heat, animal));
  }
  return all;
}

}  // namespace loamsheet
