#include "plan/air/readings.h"

#include <algorithm>
#include <cmath>

#include "base/middle.h"
#include "plan/air/around.h"
#include "plan/air/constants.h"
#include "plan/light/constants.h"

namespace loamsheet {
namespace {

constexpr std::size_t most_readings = 3;

double span(const Range<Celsius>& range) {
  return range.high.v - range.low.v;
}

// How far apart the tank is by day or by night between two cases of what is around it.
void move(FirstReading& reading, const Shell& tank, const Range<Around>& ends) {
  for (bool by_day : {true, false}) {
    const Balance low = settle(tank, ends.low, by_day), high = settle(tank, ends.high, by_day);
    reading.humidity = std::max(reading.humidity, std::fabs(low.humidity.v - high.humidity.v));
    reading.warmth = std::max(reading.warmth, std::fabs(low.temperature.v - high.temperature.v));
  }
}

// One value at both of its ends, at both ends of the year.
template <class Set>
FirstReading moved(const char* of, const Build& build, const Shell& tank, Set set) {
  FirstReading reading{of};
  const Range<Celsius>& room = build.room.temperature.range;
  for (Celsius at : {room.low, room.high}) {
    Range<Around> ends{usual_around(build, at), usual_around(build, at)};
    set(ends.low, false), set(ends.high, true);
    move(reading, tank, ends);
  }
  return reading;
}

FirstReading room_humidity(const Build& build, const Shell& tank) {
  const auto& range = build.room.humidity.range;
  FirstReading reading = moved("room-humidity", build, tank, [&](Around& around, bool high) {
    around.room_humidity = high ? range.high : range.low;
  });
  reading.share = range;
  return reading;
}

FirstReading room_temperature(const Build& build, const Shell& tank) {
  FirstReading reading{"room-temperature"};
  reading.celsius = build.room.temperature.range;
  move(reading, tank,
       {usual_around(build, reading.celsius.low), usual_around(build, reading.celsius.high)});
  return reading;
}

FirstReading openings(const Build& build, const Shell& tank) {
  return moved("openings", build, tank, [](Around& around, bool high) {
    around.vents = high ? constants::vent_spread.high : constants::vent_spread.low;
  });
}

FirstReading water_lost(const Build& build, const Shell& tank) {
  const Range<double> evaporation = evaporation_ends(build);
  return moved("water-lost", build, tank, [&](Around& around, bool high) {
    around.evaporation = high ? evaporation.high : evaporation.low;
    around.leaves = high ? constants::leaves_give_off.high : constants::leaves_give_off.low;
  });
}

// How much of the animals' bands a reading moves the air across.
double telling(const FirstReading& reading, const Build& build) {
  double humid = constants::usual_humidity_band, warm = constants::usual_heat_band;
  for (const KeptAnimal& animal : build.kept) {
    if (const auto& band = animal.facts.humidity) {
      humid = std::min(humid, (band->value.high - band->value.low).v);
    }
    if (const auto& band = animal.facts.day) warm = std::min(warm, span(band->value));
  }
  return std::max(reading.humidity / std::max(humid, constants::least_humidity_band),
                  reading.warmth / std::max(warm, constants::least_heat_band));
}

bool must_be_metered(const KeptAnimal& animal) {
  return animal.facts.uv_zone && animal.facts.uv_zone->value.low >= constants::metered_zone;
}

// What no balance gives.
std::vector<FirstReading> beyond_the_balance(const Build& build) {
  std::vector<FirstReading> all;
  const auto any_lamp = [&](auto wanted) {
    return std::any_of(build.lamps.begin(), build.lamps.end(), wanted);
  };
  const bool uv = any_lamp([](const Lamp& lamp) { return !lamp.uv_index.empty(); });
  const bool spot = any_lamp([](const Lamp& lamp) { return lamp.kind->warms_a_place; });
  if (uv && std::any_of(build.kept.begin(), build.kept.end(), must_be_metered)) {
    all.push_back({"uv"});
  }
  for (const KeptAnimal& animal : build.kept) {
    if (!animal.facts.basking || !spot) continue;
    all.push_back({"basking"});
    all.back().celsius = animal.facts.basking->value;
    break;
  }
  return all;
}

}  // namespace

std::vector<FirstReading> first_readings(const Build& build) {
  const Shell tank = tank_of(build);
  std::vector<FirstReading> all = beyond_the_balance(build);
  std::vector<FirstReading> moving{room_humidity(build, tank), room_temperature(build, tank),
                                   openings(build, tank)};
  if (!build.measured_loss) moving.push_back(water_lost(build, tank));
  std::stable_sort(moving.begin(), moving.end(), [&](const FirstReading& a, const FirstReading& b) {
    return telling(a, build) > telling(b, build);
  });
  for (FirstReading& reading : moving) {
    if (all.size() < most_readings) all.push_back(std::move(reading));
  }
  return all;
}

}  // namespace loamsheet
