#include <algorithm>
#include <catch2/catch.hpp>

#include "builds.h"
#include "climate_builds.h"
#include "plan/air/air.h"
#include "plan/air/around.h"
#include "plan/air/balance.h"
#include "plan/plan.h"

using namespace loamsheet;
using namespace loamsheet::tests;

namespace {

Build kept() {
  Build build = box_build();
  build.room.temperature.range = {{17}, {26}};
  build.room.humidity.range = {{0.35}, {0.60}};
  KeptAnimal skink;
  skink.facts.day = Fact<Range<Celsius>>{{{24}, {27}}, {"common practice"}};
  skink.facts.night = Fact<Range<Celsius>>{{{21}, {24}}, {"common practice"}};
  build.kept.push_back(skink);
  return build;
}

Build heated(double watts, bool thermostat) {
  Build build = kept();
  build.heaters.push_back({"panel", watts, thermostat, {}});
  return build;
}

}  // namespace

TEST_CASE("what basks under its own lamp bears a tank as cool as its night") {
  const auto cold = [](double celsius, bool lamp) {
    Build build = room_of(celsius, 0.5);
    KeptAnimal& dragon = build.kept.front();
    dragon.facts.day = Fact<Range<Celsius>>{{{30}, {34}}, {"common practice"}};
    dragon.facts.basking = Fact<Range<Celsius>>{{{38}, {42}}, {"common practice"}};
    if (lamp) build.lamps.push_back(uv_lamp(0));
    const Plan plan = make_plan(build);
    return std::any_of(plan.findings.begin(), plan.findings.end(),
                       [](const Finding& f) { return f.rule == "too-cold"; });
  };
  CHECK(cold(26, false));
  CHECK_FALSE(cold(26, true));
  CHECK(cold(12, true));
}

TEST_CASE("a thermostat holds the band and uses only what that takes") {
  const Build build = heated(400, true);
  CHECK(air_plan(build).winter.day.temperature.low.v == Approx(25.5));
  CHECK(air_plan(build).winter.night.temperature.low.v == Approx(21));
  const HeatPlan heat = heat_plan(build);
  CHECK(heat.kwh_month == Approx((12 * *heat.needed_day + 12 * *heat.needed_night) * 30 / 1000));
}

TEST_CASE("a heater without a thermostat runs all day and all year") {
  CHECK(heat_plan(heated(40, false)).kwh_month == Approx(40 * 24 * 30 / 1000.0));
  CHECK(air_plan(heated(40, false)).summer.day.temperature.low >
        air_plan(heated(40, true)).summer.day.temperature.low);
}

TEST_CASE("a heater without a thermostat warms and takes no more than its cut-out lets through") {
  Build build = heated(100, false);
  const Celsius night = air_plan(build).winter.night.temperature.low;
  REQUIRE(night > Celsius{21});
  build.heaters[0].cut_out = Celsius{19};
  const AirPlan air = air_plan(build);
  CHECK(air.winter.night.temperature.low.v == Approx(19));
  CHECK(air.winter.day.temperature.high.v == Approx(19));
  const Shell tank = tank_of(build);
  const Around around = usual_around(build, {17});
  const double watts = heat_taken(tank, around, vapour_balance(tank, around, {19}));
  CHECK(watts < 100);
  CHECK(heat_plan(build).kwh_month == Approx(watts * 24 * 30 / 1000));
}

TEST_CASE("of two heat sources the one that stops first gives only what the other leaves") {
  const Build build = kept();
  const Shell tank = tank_of(build);
  const Around around = usual_around(build, {17});
  const auto watts_for = [&](Celsius air) {
    return heat_taken(tank, around, vapour_balance(tank, around, air));
  };
  const HeatSources both{{watts_for({20}), Celsius{30}}, {500, Celsius{22}}};
  CHECK(warmed_by(tank, around, 0, both).temperature == Celsius{22});
  const HeatSources warm{{watts_for({24}), Celsius{30}}, {500, Celsius{22}}};
  CHECK(warmed_by(tank, around, 0, warm).temperature.v == Approx(24).epsilon(1e-3));
  CHECK(watts_at(both, {22}) == Approx(watts_for({20}) + 500));
  CHECK(watts_at(both, {23}) == Approx(watts_for({20})));
}

TEST_CASE("a heater that is too weak gives all it has") {
  const HeatPlan heat = heat_plan(heated(5, true));
  CHECK(*heat.needed_night > 5);
  CHECK(heat.kwh_month == Approx(5 * 24 * 30 / 1000.0));
}

TEST_CASE("walls of five-millimetre glass lose the heat their faces and thickness say") {
  const double u = 1 / (0.13 + 0.005 / 1.0 + 0.13);
  CHECK(wall_loss(tank_of(kept())) == Approx(u * (2 * (0.9 + 0.45) * 0.6 + 0.9 * 0.45)));
}

TEST_CASE("without an animal no watts are needed for one") {
  Build build = heated(40, true);
  build.kept.clear();
  CHECK_FALSE(heat_plan(build).needed_day.has_value());
  CHECK(heat_plan(build).fitted == Approx(40));
}

TEST_CASE("animals that share no band are held to none") {
  Build build = heated(40, true);
  build.kept.push_back(build.kept[0]);
  build.kept[1].facts.day->value = {{30}, {33}};
  CHECK_FALSE(heat_plan(build).needed_day.has_value());
}
