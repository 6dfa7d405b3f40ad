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

// Of the day, which is as long as any lamp is lit, or of the night.
double hours(const Build& build, bool by_day) {
  double longest = 0;
  for (const Lamp& lamp : build.lamps) longest = std::max(longest, lamp.hours);
  const double day = longest > 0 ? longest : constants::usual_day;
  return by_day ? day : 24 - day;
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

// No thermostat stops anything; a cut-out of a heater's own does.
Range<Celsius> all_on(const Build& build, const Shell& tank) {
  HeatSources heaters;
  for (const Heater& heater : build.heaters) heaters.push_back({heater.power, heater.cut_out});
  return over_cases(build, build.room.temperature.range.high, [&](const Around& around) {
    return warmed_by(tank, around, full_watts(tank.lamps), heaters).temperature;
  });
}

// What is used in the day or the night of a winter's day without what a thermostat lets on: watts
// that warm the tank, and watt hours. Lamps are lit for hours of their own.
struct Used {
  double given = 0, watt_hours = 0;
};

Used used(const Build& build, const Shell& tank, bool by_day) {
  const Around around = usual_around(build, build.room.temperature.range.low);
  const HeatSources free = free_heat(tank, by_day);
  const auto shares = shares_given(tank, around, by_day);
  const size_t heaters = tank.always.size();
  Used sum;
  for (size_t i = 0; i < free.size(); ++i) {
    const double given = shares[i] * free[i].watts;
    const Lamp* lamp = i < heaters ? nullptr : &build.lamps[i - heaters];
    sum.given += given;
    sum.watt_hours += lamp ? lamp->hours * shares[i] * lamp->power : hours(build, by_day) * given;
  }
  return sum;
}

double watt_hours(const Build& build, const Shell& tank, const HeatPlan& plan) {
  double sum = 0;
  for (const bool by_day : {true, false}) {
    const Used free = used(build, tank, by_day);
    const auto& needed = by_day ? plan.needed_day : plan.needed_night;
    sum += free.watt_hours + hours(build, by_day) * let_on(tank, needed, free.given);
  }
  return sum;
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
  plan.fitted = full_watts(tank.always) + tank.held;
  for (const Lamp& lamp : build.lamps) plan.fitted += lamp.power;
  plan.kwh_month = watt_hours(build, tank, plan) * month / 1000;
  plan.cost_month = cost(build, plan.kwh_month);
  plan.all_off = all_off(build, tank);
  plan.all_on = all_on(build, tank);
  return plan;
}

}  // namespace loamsheet
