#include "plan/balance.h"

#include <algorithm>

#include "plan/climate_constants.h"
#include "plan/vapour.h"

namespace loamsheet {
namespace {

constexpr double seconds = 3600;
constexpr int halvings = 22;                   // of a span of 100: finer than any printed digit
constexpr double coldest = -10, warmest = 90;  // K against the room

// Where a falling function crosses zero between two ends.
template <class F>
double crossing(Range<double> ends, F falling) {
  for (int i = 0; i < halvings; ++i) {
    const double middle = (ends.low + ends.high) / 2;
    (falling(middle) > 0 ? ends.low : ends.high) = middle;
  }
  return (ends.low + ends.high) / 2;
}

// Kilograms an hour that floor and leaves give off.
double given_off(const Shell& tank, const Around& around, Celsius inside, double humidity) {
  const double deficit = saturation_pressure(inside) * (1 - humidity);
  const double leaves = tank.plants * around.leaves / 24 * deficit / constants::office_deficit;
  return leaves + around.evaporation * tank.wet * evaporation({inside, inside, Fraction{humidity}});
}

Balance with_heat(const Shell& tank, const Around& around, double watts) {
  const double above = crossing({coldest, warmest}, [&](double warmer) {
    const Celsius inside = around.room + Celsius{warmer};
    return watts - heat_taken(tank, around, vapour_balance(tank, around, inside));
  });
  return vapour_balance(tank, around, around.room + Celsius{above});
}

}  // namespace

Balance vapour_balance(const Shell& tank, const Around& around, Celsius inside) {
  const double warmer = inside.v - around.room.v;
  const double flow = around.vents * vent_flow(tank.openings, warmer, around.room);
  const double outside = vapour_density(around.room, around.room_humidity);
  const auto carried_out = [&](double humidity) {
    return seconds * flow * (vapour_density(inside, {humidity}) - outside);
  };
  const auto gained = [&](double humidity) {
    return given_off(tank, around, inside, humidity) - carried_out(humidity);
  };
  const double humidity = gained(1) >= 0 ? 1 : crossing({0, 1}, gained);
  return {inside, {humidity}, flow, std::max(0.0, carried_out(humidity))};
}

double heat_taken(const Shell& tank, const Around& around, const Balance& state) {
  const double warmer = state.temperature.v - around.room.v;
  return (tank.walls + constants::air_heat_capacity * state.flow) * warmer +
         constants::heat_of_evaporation / seconds * state.lost;
}

std::optional<Celsius> target(const Shell& tank, bool by_day) {
  if (!by_day) return tank.night ? std::optional(tank.night->low) : std::nullopt;
  return tank.day ? std::optional((tank.day->low + tank.day->high) / 2) : std::nullopt;
}

Balance settle(const Shell& tank, const Around& around, bool by_day) {
  const double free_heat = tank.always + (by_day ? tank.lamps : 0);
  const Balance unheated = with_heat(tank, around, free_heat);
  const auto hold = target(tank, by_day);
  if (!hold || tank.held <= 0 || unheated.temperature >= *hold) return unheated;
  const Balance held = vapour_balance(tank, around, *hold);
  const double most = free_heat + tank.held;
  return heat_taken(tank, around, held) <= most ? held : with_heat(tank, around, most);
}

}  // namespace loamsheet
