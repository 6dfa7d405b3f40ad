// What the findings of air, heat and water say, what clears them, and what is measured first.
#include <algorithm>
#include <catch2/catch.hpp>
#include <optional>

#include "air_builds.h"
#include "plan/air/air.h"
#include "plan/air/air_remedy.h"
#include "plan/air/salts.h"
#include "plan/plan.h"

using namespace loamsheet;
using namespace loamsheet::tests;

namespace {

std::optional<Finding> finding(const Build& build, const std::string& rule) {
  for (const Finding& f : make_plan(build).findings) {
    if (f.rule == rule) return f;
  }
  return std::nullopt;
}

std::string text_arg(const Finding& finding, const std::string& slot) {
  for (const auto& [name, value] : finding.args) {
    if (name == slot) return std::get<std::string>(value);
  }
  return "";
}

}  // namespace

TEST_CASE("a thermostat that sticks stops a build only on a fact that has a source") {
  CHECK(finding(stuck(28, "common practice"), "thermostat-fails-hot")->weight == Weight::stop);
  CHECK(finding(stuck(28, "from memory"), "thermostat-fails-hot")->weight == Weight::caution);
  CHECK_FALSE(finding(stuck(60, "common practice"), "thermostat-fails-hot"));
}

TEST_CASE("a second cut-out clears the stop of a thermostat that sticks") {
  Build build = stuck(28, "common practice");
  build.heaters.front().cut_out = Celsius{27.5};
  CHECK_FALSE(finding(build, "thermostat-fails-hot"));
  CHECK(make_plan(build).heat->all_on.high.v == Approx(27.5));
  build.heaters.front().cut_out = Celsius{29};
  CHECK(finding(build, "thermostat-fails-hot"));
}

TEST_CASE(
    "a power cut is a note where nights are cool for once and a caution where they are cold") {
  CHECK(finding(room_of(19, 0.5), "power-cut-cold")->weight == Weight::note);
  CHECK(finding(room_of(12, 0.5), "power-cut-cold")->weight == Weight::caution);
  CHECK_FALSE(finding(room_of(25, 0.5), "power-cut-cold"));
}

TEST_CASE("air that may miss its band both ways is one note that asks for a reading") {
  const Build build = with_band(0.58, 0.60);
  CHECK(finding(build, "humidity-unsure")->weight == Weight::note);
  CHECK_FALSE(finding(build, "humidity-low"));
  CHECK_FALSE(finding(build, "humidity-high"));
}

TEST_CASE("dry air is mended by covering mesh, and only where covering is enough") {
  Build build = with_band(0.75, 0.99);
  build.enclosure.openings.back().mesh = true;
  CHECK(text_arg(*finding(build, "humidity-low"), "mend") == "cover-mesh");
  build.enclosure.openings.back().mesh = false;
  CHECK(text_arg(*finding(build, "humidity-low"), "mend") == "damp-otherwise");
}

TEST_CASE("cold is mended by a heater, and by the room where nothing is held") {
  Build build = room_of(15, 0.5);
  CHECK(text_arg(*finding(build, "too-cold-at-night"), "mend") == "add-heater");
  build.kept.push_back(build.kept.front());
  build.kept[1].facts.night->value = {{5}, {8}};
  CHECK(text_arg(*finding(build, "too-cold-at-night"), "mend") == "warm-room");
}

TEST_CASE("salts gather only where nothing drains away, and sooner with harder water") {
  Build build = box_build();
  build.water_source = "tap";
  CHECK_FALSE(flush_every(build, Litres{5}, Litres{0.5}));
  build.layers.drainage.outlet = "none";
  const auto tap = flush_every(build, Litres{5}, Litres{0.5});
  CHECK(*tap == 18);  // (830 - 300) mg/L of 5 L, brought at 150 mg a day: 17.7 days
  build.water_source = "rain";
  CHECK_FALSE(flush_every(build, Litres{5}, Litres{0.5}));  // the substrate is renewed before
  CHECK(*flush_every(build, Litres{2}, Litres{0.5}) > 10 * *tap * 2 / 5);
  build.water_source = "";
  CHECK_FALSE(flush_every(build, Litres{5}, Litres{0.5}));
}

TEST_CASE("a fogger has its own caution") {
  Build build = box_build();
  build.misting = nozzles();
  CHECK_FALSE(finding(build, "fogger"));
  build.misting->fogger = true;
  CHECK(finding(build, "fogger")->weight == Weight::caution);
}

TEST_CASE("the cost of a month is exact, to the coin") {
  Build build = room_of(15, 0.5);
  build.heaters.push_back({"panel", 40, false, {}});         // 28.8 kWh in 30 days
  build.room.tariff = Money{3333};                           // 0.3333
  CHECK(make_plan(build).heat->cost_month == Money{96000});  // 9.60, of 9.59904
}

TEST_CASE("what no balance gives is measured before what moves the air") {
  Build build = hot_attic();
  build.room.humidity.range = {{0.2}, {0.7}};
  build.kept.front().facts.basking = Fact<Range<Celsius>>{{{38}, {42}}, {"common practice"}};
  const auto readings = make_plan(build).readings;
  REQUIRE(readings.size() == 3);
  CHECK(readings[0].of == "uv");
  CHECK(readings[1].of == "basking");
  CHECK(readings[2].of == "room-humidity");
}

TEST_CASE("of the readings that move the air the one that moves it further comes first") {
  Build build = room_of(25, 0.5);
  build.kept.clear();
  CHECK(make_plan(build).readings[0].of != "room-temperature");
  build.room.temperature.range = {{5}, {35}};
  CHECK(make_plan(build).readings[0].of == "room-temperature");
}

TEST_CASE("a climate is held against everything that lives in it") {
  Build build = room_of(12, 0.5);
  CrewUse crew;
  crew.facts.name = "springtail";
  crew.facts.coldest = Fact<Celsius>{{15}, {"common practice"}};
  build.crew.push_back(crew);
  const Plan plan = make_plan(build);
  const auto fit = climate_fit(build, *plan.air);
  REQUIRE(fit.size() == 2);
  CHECK(fit[0].at[0].coldest);
  CHECK_FALSE(fit[0].at[0].warmest);
  CHECK(fit[1].at[0].coldest == plan.air->winter.day.temperature.low);
  CHECK(finding(build, "living-too-cold"));
}
