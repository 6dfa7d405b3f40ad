#include <catch2/catch.hpp>
#include <cmath>

#include "builds.h"
#include "plan/air/air.h"
#include "plan/air/balance.h"
#include "plan/plan.h"

using namespace loamsheet;
using namespace loamsheet::tests;

namespace {

Build ventilated(double lid_open = 0.45) {
  Build build = box_build();
  build.room.temperature.range = {{17}, {26}};
  build.room.humidity.range = {{0.35}, {0.60}};
  build.room.stated = true;
  Opening lid = opening("lid", Opening::Where::top, 0_mm);
  lid.lower_edge.reset();
  lid.gross = {0.225}, lid.free = {0.225 * lid_open};
  build.enclosure.openings.push_back(lid);
  build.enclosure.openings[0].free = build.enclosure.openings[0].gross = {0.004};
  return build;
}

Build lit(double watts) {
  Build build = ventilated();
  Lamp lamp;
  lamp.at = {450, 320, 660};
  lamp.power = watts, lamp.hours = 12;
  build.lamps.push_back(lamp);
  return build;
}

}  // namespace

TEST_CASE("a stack between two openings draws what the formula says") {
  const std::vector<Vent> two{{0.1, 0.01, 0.01}, {0.6, 0, 0.02}};
  const double expected = 0.6 * std::sqrt(2 * 9.81 * 0.5 * 3 / 293.15) /
                          std::sqrt(1 / (0.01 * 0.01) + 1 / (0.02 * 0.02));
  CHECK(vent_flow(two, 3, Celsius{20}) == Approx(expected));
}

TEST_CASE("a lid alone still exchanges air, also when the tank is no warmer than the room") {
  const std::vector<Vent> lid{{0.6, 0, 0.1}};
  CHECK(vent_flow(lid, 0, Celsius{20}) > 0);
  CHECK(vent_flow(lid, 4, Celsius{20}) == Approx(2 * vent_flow(lid, 1, Celsius{20})));
}

TEST_CASE("in steady state the vapour given off is the vapour carried out") {
  const Build build = ventilated();
  const Shell tank = tank_of(build);
  const Around around{{20}, {0.4}, 1, 1, 0.05};
  const Balance dry = vapour_balance(tank, around, {22});
  Around wetter = around;
  wetter.evaporation = 1.5;
  const Balance wet = vapour_balance(tank, wetter, {22});
  CHECK(dry.humidity > around.room_humidity);
  CHECK(wet.humidity > dry.humidity);
  CHECK(wet.lost > dry.lost);
}

TEST_CASE("lamps warm the day and leave the night alone") {
  const AirPlan dark = air_plan(ventilated()), lamps = air_plan(lit(80));
  CHECK(lamps.winter.day.temperature.low.v > dark.winter.day.temperature.high.v + 1);
  CHECK(lamps.winter.night.temperature == dark.winter.night.temperature);
}

TEST_CASE("more open mesh makes the tank drier and exchanges more") {
  const AirPlan close = air_plan(ventilated(0.1)), open = air_plan(ventilated(0.9));
  CHECK(open.summer.day.humidity.high < close.summer.day.humidity.high);
  CHECK(open.summer.day.vent.low > close.summer.day.vent.low);
}

TEST_CASE("an arid floor leaves the air nearly as dry as the room") {
  Build arid = ventilated();
  arid.kind = BuildKind::arid;
  CHECK(air_plan(arid).summer.day.humidity.high.v < 0.70);
  CHECK(air_plan(arid).summer.day.humidity.high < air_plan(ventilated()).summer.day.humidity.high);
}

TEST_CASE("a tank without openings is saturated") {
  Build build = ventilated();
  build.enclosure.openings.clear();
  CHECK(air_plan(build).winter.day.humidity.high.v == 1);
}

TEST_CASE("under lamps the top is drier than the floor") {
  const Build build = lit(80);
  const AirPlan air = air_plan(build);
  CHECK(humidity_at(build, air, 550_mm).high < humidity_at(build, air, 100_mm).high);
  CHECK(humidity_at(build, air, 550_mm).low < humidity_at(build, air, 100_mm).low);
}

TEST_CASE("a room that nobody knows makes the sheet provisional") {
  Build build = ventilated();
  build.room.humidity.unknown = 0;
  build.unknowns.push_back({"room.humidity", place(9, 1), "catalogue", "35–60 %"});
  CHECK(air_depends_on(build, 0));
  CHECK(make_plan(build).status == Status::provisional);
  build.room.humidity.range = {{0.5}, {0.5}};
  CHECK_FALSE(air_depends_on(build, 0));
}
