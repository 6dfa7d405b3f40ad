#include "plan/air/around.h"

#include <cmath>

#include "base/crossing.h"
#include "base/middle.h"
#include "plan/air/constants.h"

namespace loamsheet {
namespace {

constexpr double close = 1e-3;  // of a logarithm

// What evaporation, times what was worked out, loses so many litres a day.
double evaporation_for(const Build& build, const Shell& tank, Litres a_day) {
  const Range<double> ends{std::log(constants::evaporation_within.low),
                           std::log(constants::evaporation_within.high)};
  return std::exp(crossing(ends, close, [&](double times) {
    return a_day.v - daily_loss(build, tank, std::exp(times));
  }));
}

}  // namespace

Around usual_around(const Build& build, Celsius room) {
  const auto& leaves = constants::leaves_give_off;
  return {room, {middle(build.room.humidity.range)}, 1, 1, (leaves.low + leaves.high) / 2};
}

double daily_loss(const Build& build, const Shell& tank, double evaporation) {
  constexpr double half_day = 12;
  const Range<Celsius>& room = build.room.temperature.range;
  double sum = 0;
  for (Celsius at : {room.low, room.high}) {
    Around around = usual_around(build, at);
    around.evaporation = evaporation;
    sum += half_day * (settle(tank, around, true).lost + settle(tank, around, false).lost);
  }
  return sum / 2;
}

Range<double> evaporation_ends(const Build& build) {
  if (!build.measured_loss) return constants::evaporation_spread;
  const Shell tank = tank_of(build);
  return {evaporation_for(build, tank, build.measured_loss->low),
          evaporation_for(build, tank, build.measured_loss->high)};
}

std::vector<Around> cases_around(const Build& build, Celsius room) {
  const Range<double> evaporation = evaporation_ends(build);
  const auto& leaves = constants::leaves_give_off;
  std::vector<Around> all;
  for (Fraction humidity : {build.room.humidity.range.low, build.room.humidity.range.high}) {
    for (double vents : {constants::vent_spread.low, constants::vent_spread.high}) {
      all.push_back({room, humidity, vents, evaporation.low, leaves.low});
      all.push_back({room, humidity, vents, evaporation.high, leaves.high});
    }
  }
  return all;
}

}  // namespace loamsheet
