// Laws of heat, vapour, misting and of the changes that findings name.
#include "plan/air/air.h"

#include <algorithm>
#include <cmath>

#include "laws.h"
#include "plan/air/air_remedy.h"
#include "plan/air/around.h"
#include "plan/air/balance.h"
#include "plan/air/misting.h"
#include "plan/air/vapour.h"

using namespace loamsheet;
using namespace loamsheet::tests;

namespace {

Opening drawn_lid(const Enclosure& tank) {
  Opening lid;
  lid.at = Opening::Where::top;
  lid.mesh = true;
  lid.gross = {area(tank.footprint).v * drawn(5, 80) / 100};
  lid.free = {lid.gross.v * drawn(20, 70) / 100};
  return lid;
}

KeptAnimal drawn_animal() {
  KeptAnimal animal;
  const double night = drawn(16, 22), day = night + drawn(1, 6);
  animal.facts.night = Fact<Range<Celsius>>{{{night}, {night + 3}}, {"common practice"}};
  animal.facts.day = Fact<Range<Celsius>>{{{day}, {day + drawn(2, 5)}}, {"common practice"}};
  const double damp = drawn(30, 80) / 100.0;
  animal.facts.humidity = Fact<Range<Fraction>>{{{damp}, {damp + 0.15}}, {"common practice"}};
  return animal;
}

Build drawn_climate() {
  Build build = drawn_build();
  const double cold = drawn(8, 20);
  build.room.temperature.range = {{cold}, {cold + drawn(0, 12)}};
  const double dry = drawn(15, 60) / 100.0;
  build.room.humidity.range = {{dry}, {dry + drawn(0, 30) / 100.0}};
  build.room.stated = true;
  build.enclosure.openings.push_back(drawn_lid(build.enclosure));
  if (drawn(0, 1) == 1) {
    Lamp lamp;
    lamp.power = drawn(5, 120), lamp.hours = 12;
    lamp.at = {100, 100, build.enclosure.height.v + 50};
    build.lamps.push_back(lamp);
  }
  if (drawn(0, 1) == 1) build.heaters.push_back({"panel", drawn(5, 80) * 1.0, true, {}});
  build.kept.push_back(drawn_animal());
  return build;
}

Around drawn_around(const Build& build) {
  const auto all = cases_around(build, build.room.temperature.range.low);
  return all[static_cast<std::size_t>(drawn(0, static_cast<int>(all.size()) - 1))];
}

const AirState* states(const AirPlan& air, int i) {
  const AirState* all[] = {&air.winter.day, &air.winter.night, &air.summer.day, &air.summer.night};
  return all[i];
}

// Within, up to the closeness to which the balance is solved.
template <class T>
bool holds_range(const Range<T>& outer, const Range<T>& inner, double slack) {
  return outer.low.v <= inner.low.v + slack && outer.high.v >= inner.high.v - slack;
}

bool no_narrower(const AirPlan& wide, const AirPlan& narrow) {
  for (int i = 0; i < 4; ++i) {
    const AirState &w = *states(wide, i), &n = *states(narrow, i);
    if (!holds_range(w.temperature, n.temperature, 1e-2)) return false;
    if (!holds_range(w.humidity, n.humidity, 1e-3)) return false;
    if (!holds_range(w.lost, n.lost, 1e-4)) return false;
  }
  return true;
}

double width(const AirPlan& air) {
  double widest = 0;
  for (int i = 0; i < 4; ++i) {
    const auto& humidity = states(air, i)->humidity;
    widest = std::max(widest, (humidity.high - humidity.low).v);
  }
  return widest;
}

}  // namespace

TEST_CASE("vapour given off leaves through the openings or runs down the panes") {
  holds("vapour closes", [] {
    const Build build = drawn_climate();
    const Shell tank = tank_of(build);
    const Around around = drawn_around(build);
    const Balance b = vapour_balance(tank, around, around.room + Celsius{drawn(0, 15) * 1.0});
    const double outside = vapour_density(around.room, around.room_humidity);
    const double inside = vapour_density(b.temperature, b.humidity);
    const double through = 3600 * b.flow * (inside - outside);
    if (b.humidity.v >= 1) return;  // saturated: what the floor would give beyond stays where it is
    RC_ASSERT(std::fabs(b.given - through - b.condensed) <= 1e-4 * std::max(1.0, b.given));
  });
}

TEST_CASE("the heat that goes in is the heat that is taken") {
  holds("heat closes", [] {
    const Build build = drawn_climate();
    const Shell tank = tank_of(build);
    const Around around = drawn_around(build);
    const double watts = drawn(0, 200);
    const Balance b = warmed_by(tank, around, watts);
    RC_ASSERT(std::fabs(heat_taken(tank, around, b) - watts) < 0.05);
  });
}

TEST_CASE("at one temperature and with damper air inside, more vent never makes it damper") {
  holds("vent dries", [] {
    const Build build = drawn_climate();
    const Shell tank = tank_of(build);
    Around around = drawn_around(build);
    const Celsius inside = around.room + Celsius{drawn(0, 12) * 1.0};
    const Balance before = vapour_balance(tank, around, inside);
    const double outside = vapour_density(around.room, around.room_humidity);
    if (vapour_density(inside, before.humidity) <= outside) return;
    around.vents *= 1 + drawn(1, 300) / 100.0;
    const Balance after = vapour_balance(tank, around, inside);
    RC_ASSERT(after.humidity.v <= before.humidity.v + 1e-6);
  });
}

TEST_CASE("a room that is known less well never narrows what is printed of the air") {
  holds("widening", [] {
    const Build build = drawn_climate();
    Build wide = build;
    auto& humidity = wide.room.humidity.range;
    humidity.low = humidity.low * 0.9,
    humidity.high = Fraction{std::min(1.0, humidity.high.v * 1.1)};
    const AirPlan narrow = air_plan(build), wider = air_plan(wide);
    RC_ASSERT(no_narrower(wider, narrow));
    const bool saturated = narrow.winter.day.humidity.low.v >= 1;
    RC_ASSERT(saturated || width(wider) > width(narrow));
  });
}

TEST_CASE("a measured loss is what the balance then loses") {
  holds("calibration", [] {
    Build build = drawn_climate();
    const Shell tank = tank_of(build);
    const double usual = daily_loss(build, tank, 1);
    if (usual < 0.02) return;
    const Litres measured{usual * drawn(60, 130) / 100};
    build.measured_loss = Range<Litres>{measured, measured};
    const Range<double> ends = evaporation_ends(build);
    const double reached = daily_loss(build, tank, ends.low);
    const bool out_of_reach =
        daily_loss(build, tank, 20) < measured.v || daily_loss(build, tank, 0.05) > measured.v;
    RC_ASSERT(out_of_reach || std::fabs(reached - measured.v) < 0.01 * measured.v);
  });
}

TEST_CASE("the change that a finding names brings the air into the band") {
  holds("mends", [] {
    const Build build = drawn_climate();
    const AirPlan air = air_plan(build);
    const Animal& animal = build.kept.front().facts;
    const Celsius cold = build.room.temperature.range.low, hot = build.room.temperature.range.high;
    constexpr double slack = 1e-3, kelvin = 0.01;
    const Fraction least = animal.humidity->value.low, most = animal.humidity->value.high;
    if (air.winter.day.humidity.low < least) {
      if (const auto mend = for_damper_air(build, cold, least)) {
        RC_ASSERT(air_plan(mended(build, *mend)).winter.day.humidity.low.v >= least.v - slack);
      }
    }
    if (air.summer.day.humidity.high > most) {
      if (const auto mend = for_drier_air(build, hot, most)) {
        RC_ASSERT(air_plan(mended(build, *mend)).summer.day.humidity.high.v <= most.v + slack);
      }
    }
    const Celsius night = animal.night->value.low;
    if (air.winter.night.temperature.low < night) {
      if (const auto mend = for_warmer_winter(build, night, false)) {
        const auto& now = air_plan(mended(build, *mend)).winter.night.temperature;
        RC_ASSERT(now.low.v >= night.v - kelvin);
      }
    }
    const Celsius day = animal.day->value.high;
    if (air.summer.day.temperature.high > day) {
      if (const auto mend = for_cooler_summer(build, day)) {
        const auto& now = air_plan(mended(build, *mend)).summer.day.temperature;
        RC_ASSERT(now.high.v <= day.v + kelvin);
      }
    }
  });
}

TEST_CASE("if any misting schedule gives what is wanted and no more than may be, one is returned") {
  holds("misting", [] {
    Misting mister;
    mister.by_hand = drawn(0, 1) == 1;
    mister.nozzles = drawn(1, 6);
    mister.flow.range = {{0.06}, {0.06}};
    mister.pull.range = {{0.0009}, {0.0009}};
    const Litres wanted{drawn(1, 900) / 1000.0};
    const Litres most = wanted + Litres{drawn(0, 100) / 1000.0};
    const int mistings = drawn(1, 5);
    const double stroke = per_stroke(mister).v;
    const int shortest = mister.by_hand ? 5 : 3;
    bool any = false;
    for (int times = 1; times <= mistings; ++times) {
      for (int each = shortest; each * times * stroke <= most.v + 1e-9; ++each) {
        const bool can_be_set = mister.by_hand || each < 30 || each % 5 == 0;
        if (can_be_set && each * times * stroke >= wanted.v - 1e-9) any = true;
      }
    }
    const Spray found = spray(mister, wanted, most, mistings);
    RC_ASSERT(found.amount.v <= most.v + 1e-9);
    if (any) RC_ASSERT(found.amount.v >= wanted.v - 1e-9);
  });
}
