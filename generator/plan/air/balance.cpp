#include "plan/air/balance.h"

#include <algorithm>

#include "base/crossing.h"
#include "plan/air/constants.h"
#include "plan/air/vapour.h"

namespace loamsheet {
namespace {

constexpr double seconds = 3600;
constexpr double coldest = -10, warmest = 90;  // K against the room
constexpr double close_humidity = 1e-6, close_kelvin = 1e-4;

// Kilograms an hour that floor and leaves give off.
double given_off(const Shell& tank, const Around& around, Celsius inside, double humidity) {
  const double deficit = saturation_pressure(inside) * (1 - humidity);
  const double leaves = tank.plants * around.leaves / 24 * deficit / constants::office_deficit;
  if (tank.wet <= 0) return leaves;
  return leaves + around.evaporation * tank.wet * cooled_evaporation(inside, {humidity});
}

// The panes on the inside, as warm as they are while nothing condenses on them, and what condenses
// there for each kilogram of vapour in a cubic metre over saturation: the condensing warms them,
// which is taken in a straight line.
struct Panes {
  double saturated = 0;  // kg of vapour a cubic metre at the pane's temperature
  double takes = 0;      // m3/s

  Panes(const Shell& tank, const Around& around, Celsius inside) {
    const double within = constants::still_air_resistance, all = tank.resistance;
    const Celsius pane{inside.v - (inside.v - around.room.v) * within / all};
    saturated = vapour_density(pane, {1});
    const double slope = vapour_density(pane + Celsius{1}, {1}) - saturated;
    const double speed = constants::convects_to_wall / constants::air_heat_capacity;
    const double warms = constants::heat_of_evaporation * within * (all - within) / all;
    takes = tank.panes * speed / (1 + speed * slope * warms);
  }

  double condense(double vapour) const {
    return std::max(0.0, seconds * takes * (vapour - saturated));
  }
};

}  // namespace

Balance vapour_balance(const Shell& tank, const Around& around, Celsius inside) {
  const double warmer = inside.v - around.room.v;
  const double flow = around.vents * vent_flow(tank.openings, warmer, around.room);
  const double outside = vapour_density(around.room, around.room_humidity);
  const double full = vapour_density(inside, {1});
  const Panes panes(tank, around, inside);
  const auto gained = [&](double humidity) {
    return given_off(tank, around, inside, humidity) -
           seconds * flow * (full * humidity - outside) - panes.condense(full * humidity);
  };
  const double humidity = crossing({0, 1}, close_humidity, gained);
  const double lost = std::max(0.0, seconds * flow * (full * humidity - outside));
  return {inside, {humidity},
          flow,   given_off(tank, around, inside, humidity),
          lost,   panes.condense(full * humidity)};
}

// What condenses gives its heat to the pane; the pane's outer side carries this share of it away.
double heat_taken(const Shell& tank, const Around& around, const Balance& state) {
  const double warmer = state.temperature.v - around.room.v;
  const double outward = constants::still_air_resistance / tank.resistance;
  return (wall_loss(tank) + constants::air_heat_capacity * state.flow) * warmer +
         constants::heat_of_evaporation / seconds * (state.lost + outward * state.condensed);
}

Balance warmed_by(const Shell& tank, const Around& around, double watts) {
  const double above = crossing({coldest, warmest}, close_kelvin, [&](double warmer) {
    const Celsius inside = around.room + Celsius{warmer};
    return watts - heat_taken(tank, around, vapour_balance(tank, around, inside));
  });
  return vapour_balance(tank, around, around.room + Celsius{above});
}

double full_watts(const HeatSources& sources) {
  double sum = 0;
  for (const HeatSource& source : sources) sum += source.watts;
  return sum;
}

double watts_at(const HeatSources& sources, Celsius air) {
  double sum = 0;
  for (const HeatSource& s : sources) sum += s.stops_at && *s.stops_at < air ? 0 : s.watts;
  return sum;
}

// Sources are turned on one after the other, the one that stops last first: once one has nothing
// left to warm, neither have those after it.
Balance warmed_by(const Shell& tank, const Around& around, double watts,
                  const HeatSources& sources) {
  Balance state = warmed_by(tank, around, watts + full_watts(sources));
  HeatSources stopping = sources;
  std::erase_if(stopping, [](const HeatSource& s) { return !s.stops_at; });
  std::sort(stopping.begin(), stopping.end(),
            [](const auto& a, const auto& b) { return *a.stops_at > *b.stops_at; });
  if (stopping.empty() || state.temperature <= *stopping.back().stops_at) return state;
  watts += full_watts(sources) - full_watts(stopping);
  state = warmed_by(tank, around, watts);
  for (const HeatSource& source : stopping) {
    if (state.temperature >= *source.stops_at) return state;
    state = warmed_by(tank, around, watts += source.watts);
    if (state.temperature > *source.stops_at) {
      return vapour_balance(tank, around, *source.stops_at);
    }
  }
  return state;
}

HeatSources free_heat(const Shell& tank, bool by_day) {
  HeatSources all = tank.always;
  if (by_day) all.insert(all.end(), tank.lamps.begin(), tank.lamps.end());
  return all;
}

std::optional<Celsius> target(const Shell& tank, bool by_day) {
  if (!by_day) return tank.night ? std::optional(tank.night->low) : std::nullopt;
  return tank.day ? std::optional((tank.day->low + tank.day->high) / 2) : std::nullopt;
}

Balance settle(const Shell& tank, const Around& around, bool by_day) {
  const HeatSources free = free_heat(tank, by_day);
  const Balance unheated = warmed_by(tank, around, 0, free);
  const auto hold = target(tank, by_day);
  if (!hold || tank.held <= 0 || unheated.temperature >= *hold) return unheated;
  const Balance held = vapour_balance(tank, around, *hold);
  const double most = watts_at(free, *hold) + tank.held;
  return heat_taken(tank, around, held) <= most ? held : warmed_by(tank, around, tank.held, free);
}

std::vector<double> shares_given(const Shell& tank, const Around& around, bool by_day) {
  const HeatSources free = free_heat(tank, by_day);
  std::vector<double> shares(free.size(), 1);
  const auto stops = [](const HeatSource& s) { return s.stops_at.has_value(); };
  if (std::none_of(free.begin(), free.end(), stops)) return shares;
  const Balance state = settle(tank, around, by_day);
  const auto hold = target(tank, by_day);
  double open = heat_taken(tank, around, state);
  if (hold && state.temperature < *hold) open -= tank.held;
  for (const HeatSource& s : free) {
    if (!s.stops_at || *s.stops_at > state.temperature) open -= s.watts;
  }
  for (size_t i = 0; i < free.size(); ++i) {
    if (!free[i].stops_at || *free[i].stops_at > state.temperature) continue;
    const bool here = *free[i].stops_at == state.temperature && free[i].watts > 0;
    shares[i] = here ? std::clamp(open / free[i].watts, 0.0, 1.0) : 0;
    open -= shares[i] * free[i].watts;
  }
  return shares;
}

}  // namespace loamsheet
