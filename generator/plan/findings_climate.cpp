#include <algorithm>
#include <cmath>

#include "plan/climate_constants.h"
#include "plan/findings.h"
#include "plan/layers.h"

namespace loamsheet {
namespace {

// What misses a band wholly is a caution, what misses it in part a note.
enum class Miss { none, part, whole };

template <class T>
Miss below(const Range<T>& is, const Range<T>& band) {
  if (is.low >= band.low) return Miss::none;
  return is.high < band.low ? Miss::whole : Miss::part;
}

template <class T>
Miss above(const Range<T>& is, const Range<T>& band) {
  if (is.high <= band.high) return Miss::none;
  return is.low > band.high ? Miss::whole : Miss::part;
}

template <class T>
Found missed(Miss miss, Weight worst, const char* rule, const KeptAnimal& animal,
             const Range<T>& is, const Range<T>& band) {
  if (miss == Miss::none) return {};
  return {{miss == Miss::whole ? worst : Weight::note,
           rule,
           animal.where,
           {{"animal", animal.facts.name}, {"is", is}, {"band", band}}}};
}

// Nothing that is only assumed, or only known from memory, stops a build.
Weight for_heat(const Build& build, const Origin& origin) {
  const bool sure = build.room.stated && build.room.temperature.unknown < 0;
  return sure && origin.name != "from memory" ? Weight::stop : Weight::caution;
}

bool has_heat_lamp(const Build& build) {
  return std::any_of(build.lamps.begin(), build.lamps.end(), [](const Lamp& lamp) {
    return lamp.kind == Lamp::Kind::spot || lamp.kind == Lamp::Kind::uv_spot;
  });
}

// What basks under a lamp of its own warms itself there: the rest of its tank may be as cool by day
// as the night may be warm.
Found too_cold_by_day(const Build& build, const Range<Celsius>& winter, const KeptAnimal& animal) {
  Range<Celsius> band = animal.facts.day->value;
  const auto& night = animal.facts.night;
  if (animal.facts.basking && night && has_heat_lamp(build)) {
    band.low = std::min(band.low, night->value.high);
  }
  return missed(below(winter, band), Weight::caution, "too-cold", animal, winter, band);
}

Found temperature(const Build& build, const AirPlan& air, const KeptAnimal& animal) {
  Found all;
  if (const auto& day = animal.facts.day) {
    const auto &winter = air.winter.day.temperature, &summer = air.summer.day.temperature;
    append(all, too_cold_by_day(build, winter, animal));
    append(all, missed(above(summer, day->value), for_heat(build, day->origin),
                       "too-warm-in-summer", animal, summer, day->value));
  }
  if (const auto& night = animal.facts.night) {
    const auto& winter = air.winter.night.temperature;
    append(all, missed(below(winter, night->value), Weight::caution, "too-cold-at-night", animal,
                       winter, night->value));
  }
  return all;
}

Found humidity(const AirPlan& air, const KeptAnimal& animal) {
  if (!animal.facts.humidity) return {};
  const auto& band = animal.facts.humidity->value;
  const auto &winter = air.winter.day.humidity, &summer = air.summer.day.humidity;
  const auto &drier = winter.low < summer.low ? winter : summer,
             &damper = winter.high > summer.high ? winter : summer;
  Found all = missed(below(drier, band), Weight::caution, "humidity-low", animal, drier, band);
  append(all, missed(above(damper, band), Weight::caution, "humidity-high", animal, damper, band));
  return all;
}

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

}  // namespace

Found climate_findings(const Build& build, const Plan& plan) {
  Found all;
  for (const KeptAnimal& animal : build.kept) {
    if (!plan.air) break;
    append(all, temperature(build, *plan.air, animal));
    append(all, humidity(*plan.air, animal));
  }
  if (plan.air && plan.heat) append(all, heaters(build, *plan.heat, *plan.air));
  return all;
}

}  // namespace loamsheet
