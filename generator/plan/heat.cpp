#include <algorithm>

#include "plan/balance.h"
#include "plan/climate.h"
#include "plan/climate_constants.h"

namespace loamsheet {
namespace {

constexpr double month = 30;  // days

// What holding the target takes in winter, in the middle of what is not known well.
std::optional<double> needed(const Build& build, const Shell& tank, bool by_day) {
  const auto hold = target(tank, by_day);
  if (!hold) return std::nullopt;
  const auto& humidity = build.room.humidity.range;
  const auto& leaves = constants::leaves_give_off;
  const Around around{build.room.temperature.range.low, (humidity.low + humidity.high) / 2, 1, 1,
                      (leaves.low + leaves.high) / 2};
  const Balance state = vapour_balance(tank, around, *hold);
  return std::max(0.0, heat_taken(tank, around, state));
}

double day_hours(const Build& build) {
  double longest = 0;
  for (const Lamp& lamp : build.lamps) longest = std::max(longest, lamp.hours);
  return longest > 0 ? longest : constants::usual_day;
}

// Watts that the thermostat lets through, on the mean, beside what gives heat anyway.
double let_on(const Shell& tank, const std::optional<double>& needed, double given) {
  return needed ? std::clamp(*needed - given, 0.0, tank.held) : 0;
}

}  // namespace

HeatPlan heat_plan(const Build& build) {
  const Shell tank = tank_of(build);
  HeatPlan plan;
  plan.needed_day = needed(build, tank, true);
  plan.needed_night = needed(build, tank, false);
  plan.fitted = tank.always + tank.held;
  const double day = day_hours(build);
  double watt_hours = 24 * tank.always;
  for (const Lamp& lamp : build.lamps) {
    plan.fitted += lamp.power;
    watt_hours += lamp.power * lamp.hours;
  }
  watt_hours += day * let_on(tank, plan.needed_day, tank.always + tank.lamps) +
                (24 - day) * let_on(tank, plan.needed_night, tank.always);
  plan.kwh_month = watt_hours * month / 1000;
  return plan;
}

}  // namespace loamsheet
