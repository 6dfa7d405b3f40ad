#include <algorithm>
#include <cmath>

#include "plan/air/air.h"
#include "plan/air/around.h"
#include "plan/air/constants.h"

namespace loamsheet {
namespace {

constexpr double month = 30;  // days

// What holding the target takes in winter, in the middle of what is not known well.
std::optional<double> needed(const Build& build, const Shell& tank, bool by_day) {
  const auto hold = target(tank, by_day);
  if (!hold) return std::nullopt;
  const Around around = usual_around(build, build.room.temperature.range.low);
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

// Over everything that is not known well.
template <class Warmth>
Range<Celsius> over_cases(const Build& build, Celsius room, Warmth warmth) {
  std::optional<Range<Celsius>> all;
  for (const Around& around : cases_around(build, room)) {
    const Celsius t = warmth(around);
    all = all ? Range{std::min(all->low, t), std::max(all->high, t)} : Range{t, t};
  }
  return *all;
}

Range<Celsius> all_off(const Build& build, const Shell& tank) {
  return over_cases(build, build.room.temperature.range.low,
                    [&](const Around& around) { return warmed_by(tank, around, 0).temperature; });
}

// A heater with a cut-out of its own warms the tank no further than that.
Range<Celsius> all_on(const Build& build, const Shell& tank) {
  double cut = 0;
  Celsius cut_at{};
  for (const Heater& heater : build.heaters) {
    if (!heater.cut_out) continue;
    cut += heater.power;
    cut_at = std::max(cut_at, *heater.cut_out);
  }
  const double watts = tank.lamps + tank.always + tank.held;
  return over_cases(build, build.room.temperature.range.high, [&](const Around& around) {
    const Celsius all = warmed_by(tank, around, watts).temperature;
    if (cut <= 0 || all <= cut_at) return all;
    return std::max(cut_at, warmed_by(tank, around, watts - cut).temperature);
  });
}

std::optional<Money> cost(const Build& build, double kwh) {
  if (!build.room.tariff) return std::nullopt;
  const Ratio tenths{std::llround(kwh * 10), 10};  // of a kilowatt hour: no meter shows less
  return share_of(*build.room.tariff, tenths, build.quote ? build.quote->digits : 2);
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
  plan.cost_month = cost(build, plan.kwh_month);
  plan.all_off = all_off(build, tank);
  plan.all_on = all_on(build, tank);
  return plan;
}

}  // namespace loamsheet
