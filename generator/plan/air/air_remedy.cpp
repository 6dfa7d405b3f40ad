#include "plan/air/air_remedy.h"

#include <algorithm>
#include <cmath>

#include "plan/air/around.h"
#include "plan/air/constants.h"

namespace loamsheet {
namespace {

using enum Mend::What;

// What is tried, in steps of what can be set by hand.
struct Trial {
  Mend::What what;
  double first, step;
  int steps;
};

Opening more_lid(double area) {
  Opening opening;
  opening.at = Opening::Where::top;
  opening.gross = opening.free = {area};
  opening.mesh = true;
  return opening;
}

Heater on_thermostat(double watts) {
  Heater heater;
  heater.power = watts, heater.thermostat = true;
  return heater;
}

void change(Enclosure& tank, const Mend& mend) {
  if (mend.what == open_lid) tank.openings.push_back(more_lid(mend.amount));
  if (mend.what != cover_mesh) return;
  for (Opening& opening : tank.openings) {
    if (opening.mesh) opening.free = opening.free * (1 - mend.amount);
  }
}

double lamp_watts(const Build& build) {
  double sum = 0;
  for (const Lamp& lamp : build.lamps) sum += lamp.power;
  return sum;
}

double lamps_left(const Build& build, double watts_less) {
  const double all = lamp_watts(build);
  return all > 0 ? std::max(0.0, 1 - watts_less / all) : 1;
}

// The tank and what is around it, with the change made.
struct Case {
  Shell tank;
  Around around;
};

Case with(const Build& build, Case now, const Mend& mend) {
  switch (mend.what) {
    case cover_mesh:
    case open_lid: {
      Enclosure tank = build.enclosure;
      change(tank, mend);
      set_enclosure(now.tank, tank);
      break;
    }
    case add_heater:
      now.tank.held += mend.amount;
      break;
    case dim_lamps:
      for (HeatSource& lamp : now.tank.lamps) lamp.watts *= lamps_left(build, mend.amount);
      break;
    case warm_room:
    case cool_room:
      now.around.room = {mend.amount};
      break;
  }
  return now;
}

// The first step that is enough, by halving: what a later step does, an earlier one does less.
template <class Enough>
std::optional<Mend> first_enough(const Trial& trial, Enough enough) {
  const auto mend = [&](int step) { return Mend{trial.what, trial.first + step * trial.step}; };
  int too_little = 0, enough_at = trial.steps;
  if (trial.steps < 1 || !enough(mend(enough_at))) return std::nullopt;
  while (enough_at - too_little > 1) {
    const int middle = (too_little + enough_at) / 2;
    (enough(mend(middle)) ? enough_at : too_little) = middle;
  }
  return mend(enough_at);
}

constexpr Trial covering{cover_mesh, 0, 0.05, 19};
constexpr Trial heating{add_heater, 0, 5, 100};

Trial opening_lid(const Enclosure& tank) {
  constexpr double step = 0.001;
  double closed = area(tank.footprint).v;
  for (const Opening& o : tank.openings) {
    if (o.at == Opening::Where::top) closed -= o.gross.v;
  }
  return {open_lid, 0, step, static_cast<int>(closed * constants::lid_may_open / step)};
}

Trial dimming(const Build& build) {
  return {dim_lamps, 0, 5, static_cast<int>(lamp_watts(build) / 5)};
}

// From the room as it is, in whole halves, as far as rooms are lived in.
Trial room_to(Mend::What what, Celsius room) {
  const bool warmer = what == warm_room;
  const double from = warmer ? std::floor(room.v * 2) : std::ceil(room.v * 2);
  const auto& usual = constants::usual_room;
  const double halves = warmer ? usual.high.v * 2 - from : from - usual.low.v * 2;
  return {what, from / 2, warmer ? 0.5 : -0.5, std::max(0, static_cast<int>(halves))};
}

// The ends of what is not known that make the air driest and dampest, the tank coolest and warmest.
Around driest(const Build& build, Celsius room) {
  return {room, build.room.humidity.range.low, constants::vent_spread.high,
          evaporation_ends(build).low, constants::leaves_give_off.low};
}

Around dampest(const Build& build, Celsius room) {
  return {room, build.room.humidity.range.high, constants::vent_spread.low,
          evaporation_ends(build).high, constants::leaves_give_off.high};
}

Around coolest(const Build& build, Celsius room) {
  return {room, build.room.humidity.range.low, constants::vent_spread.high,
          evaporation_ends(build).high, constants::leaves_give_off.high};
}

Around warmest(const Build& build, Celsius room) {
  return {room, build.room.humidity.range.high, constants::vent_spread.low,
          evaporation_ends(build).low, constants::leaves_give_off.low};
}

// The air by day or by night once the change is made.
Balance after(const Build& build, const Case& now, const Mend& mend, bool by_day) {
  const Case changed = with(build, now, mend);
  return settle(changed.tank, changed.around, by_day);
}

}  // namespace

std::optional<Mend> for_damper_air(const Build& build, Celsius room, Fraction least) {
  const Case now{tank_of(build), driest(build, room)};
  return first_enough(
      covering, [&](const Mend& mend) { return after(build, now, mend, true).humidity >= least; });
}

std::optional<Mend> for_drier_air(const Build& build, Celsius room, Fraction most) {
  const Case now{tank_of(build), dampest(build, room)};
  return first_enough(opening_lid(build.enclosure), [&](const Mend& mend) {
    return after(build, now, mend, true).humidity <= most;
  });
}

std::optional<Mend> for_warmer_winter(const Build& build, Celsius least, bool by_day) {
  const Celsius room = build.room.temperature.range.low;
  const Case now{tank_of(build), coolest(build, room)};
  const auto enough = [&](const Mend& mend) {
    return after(build, now, mend, by_day).temperature >= least;
  };
  const auto heater = first_enough(heating, enough);
  return heater ? heater : first_enough(room_to(warm_room, room), enough);
}

std::optional<Mend> for_cooler_summer(const Build& build, Celsius most) {
  const Celsius room = build.room.temperature.range.high;
  const Case now{tank_of(build), warmest(build, room)};
  const auto enough = [&](const Mend& mend) {
    return after(build, now, mend, true).temperature <= most;
  };
  const auto lamps = first_enough(dimming(build), enough);
  return lamps ? lamps : first_enough(room_to(cool_room, room), enough);
}

Build mended(Build build, const Mend& mend) {
  const double left = lamps_left(build, mend.amount);
  Range<Celsius>& room = build.room.temperature.range;
  change(build.enclosure, mend);
  if (mend.what == add_heater) build.heaters.push_back(on_thermostat(mend.amount));
  if (mend.what == dim_lamps) {
    for (Lamp& lamp : build.lamps) lamp.power *= left;
  }
  if (mend.what == warm_room) room = {{mend.amount}, std::max(room.high, Celsius{mend.amount})};
  if (mend.what == cool_room) room = {std::min(room.low, Celsius{mend.amount}), {mend.amount}};
  return build;
}

}  // namespace loamsheet
