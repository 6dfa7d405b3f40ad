#include <algorithm>

#include "base/middle.h"
#include "plan/air/air.h"
#include "plan/air/around.h"
#include "plan/air/constants.h"
#include "plan/air/vapour.h"

namespace loamsheet {
namespace {

template <class T>
void widen(Range<T>& range, T by) {
  range = {std::min(range.low, by), std::max(range.high, by)};
}

AirState state(const std::vector<Balance>& all) {
  constexpr double litres = 1000;
  const auto first = [&](const Balance& b) {
    return AirState{{b.temperature, b.temperature},
                    {b.humidity, b.humidity},
                    {b.flow * litres, b.flow * litres},
                    {Litres{b.lost}, Litres{b.lost}},
                    {Litres{b.condensed}, Litres{b.condensed}}};
  };
  AirState air = first(all.front());
  for (const Balance& b : all) {
    widen(air.temperature, b.temperature);
    widen(air.humidity, b.humidity);
    widen(air.vent, b.flow * litres);
    widen(air.lost, Litres{b.lost});
    widen(air.condensed, Litres{b.condensed});
  }
  return air;
}

Season season(const Build& build, const Shell& tank, Celsius room) {
  std::vector<Balance> day, night;
  for (const Around& around : cases_around(build, room)) {
    day.push_back(settle(tank, around, true));
    night.push_back(settle(tank, around, false));
  }
  return {state(day), state(night)};
}

// The humidity when the same vapour is `warmer` kelvins warmer.
Fraction warmed(Fraction humidity, double from, double warmer) {
  const double ratio = saturation_pressure({from}) / saturation_pressure({from + warmer});
  return {std::min(1.0, humidity.v * ratio)};
}

Range<Fraction> humidity_in(const AirState& day, double room, double above_middle) {
  const double inside = middle(day.temperature);
  const double warmer = above_middle * constants::warm_top * 2 * std::max(0.0, inside - room);
  return {warmed(day.humidity.low, inside, warmer), warmed(day.humidity.high, inside, warmer)};
}

bool differ(const Range<double>& a, const Range<double>& b) {
  constexpr double least = 1e-6;
  return std::max(std::abs(a.low - b.low), std::abs(a.high - b.high)) > least;
}

bool differ(const AirState& a, const AirState& b) {
  const auto plain = [](const auto& r) { return Range<double>{r.low.v, r.high.v}; };
  return differ(plain(a.temperature), plain(b.temperature)) ||
         differ(plain(a.humidity), plain(b.humidity)) || differ(a.vent, b.vent);
}

bool differ(const AirPlan& a, const AirPlan& b) {
  return differ(a.winter.day, b.winter.day) || differ(a.winter.night, b.winter.night) ||
         differ(a.summer.day, b.summer.day) || differ(a.summer.night, b.summer.night);
}

// The air when the value is known to lie at one of its ends.
template <class T>
AirPlan at_end(Build build, Uncertain<T> Room::*value, T Range<T>::*end) {
  Range<T>& range = (build.room.*value).range;
  range = {range.*end, range.*end};
  return air_plan(build);
}

template <class T>
bool moves(const Build& build, Uncertain<T> Room::*value) {
  return differ(at_end(build, value, &Range<T>::low), at_end(build, value, &Range<T>::high));
}

}  // namespace

AirPlan air_plan(const Build& build) {
  const Shell tank = tank_of(build);
  const Range<Celsius>& room = build.room.temperature.range;
  return {season(build, tank, room.low), season(build, tank, room.high)};
}

Range<Fraction> humidity_at(const Build& build, const AirPlan& air, Millimetres height) {
  const double above_middle = height / build.enclosure.height - 0.5;
  const Range<Celsius>& room = build.room.temperature.range;
  Range<Fraction> both = humidity_in(air.winter.day, room.low.v, above_middle);
  const auto summer = humidity_in(air.summer.day, room.high.v, above_middle);
  widen(both, summer.low);
  widen(both, summer.high);
  return both;
}

Range<Celsius> temperature_at(const Build& build, const AirState& day, Celsius room,
                              Millimetres height) {
  const double above_middle = height / build.enclosure.height - 0.5;
  const auto at = [&](Celsius middle) {
    const double over_room = std::max(0.0, (middle - room).v);
    return middle + Celsius{above_middle * constants::warm_top * 2 * over_room};
  };
  return {at(day.temperature.low), at(day.temperature.high)};
}

bool air_depends_on(const Build& build, int unknown) {
  if (build.room.temperature.unknown == unknown) return moves(build, &Room::temperature);
  return build.room.humidity.unknown == unknown && moves(build, &Room::humidity);
}

}  // namespace loamsheet
