// What the tasks of a build are done with: on the pull list, or a tool of the bench.
#include "plan/shop/supplies.h"

#include <algorithm>
#include <catch2/catch.hpp>

#include "scheduled.h"

using namespace loamsheet;
using namespace loamsheet::tests;

namespace {

bool has_tool(const Plan& plan, const std::string& tool) {
  return std::find(plan.tools.begin(), plan.tools.end(), tool) != plan.tools.end();
}

const PullItem* pulled(const Plan& plan, const std::string& id) {
  for (const PullItem& item : plan.pull_list) {
    if (item.item == id) return &item;
  }
  return nullptr;
}

Furnishing ledge(const std::string& fixed_by) {
  Furnishing thing;
  thing.id = "shelf", thing.kind = "ledge";
  thing.at = {450, 400, 300};
  thing.fixed_by = fixed_by;
  return thing;
}

}  // namespace

TEST_CASE("tools are those of the tasks that are done") {
  const Plan humid = make_plan(full_build()), arid = make_plan(arid_build());
  for (const char* tool : {"bucket", "sieve", "siphon-hose", "gloves", "planting-tongs"}) {
    CHECK(has_tool(humid, tool));
  }
  CHECK_FALSE(has_tool(arid, "siphon-hose"));  // nothing drains
  CHECK_FALSE(has_tool(humid, "uv-meter"));
  Build lit = full_build();
  lit.lamps[0].kind = "uv-bar";
  CHECK(has_tool(make_plan(lit), "uv-meter"));
}

TEST_CASE("supplies are counted by what they serve") {
  Build build = full_build();
  build.lamps.push_back(build.lamps[0]);
  Heater heater;
  heater.kind = "panel", heater.thermostat = true;
  build.heaters = {heater, heater};
  const Plan plan = make_plan(build);
  CHECK(pulled(plan, "coir")->need == Approx(0.3 * 3));  // three plants to hold
  CHECK(pulled(plan, "lamp-hanger")->need == 2);
  CHECK(pulled(plan, "timer")->need == 1);  // two lamps of the same hours
  CHECK(pulled(plan, "thermostat")->need == 2);
  CHECK(pulled(plan, "marking-tape")->need == 1);
  build.lamps[1].hours = 6;
  CHECK(pulled(make_plan(build), "timer")->need == 2);
}

TEST_CASE("a supply that is in the mix is fetched with it") {
  Build build = full_build();
  build.layers.substrate.parts[1].bulk.material = "coir";
  Build plain = build;
  plain.rules.supplies.clear();
  const double mixed = pulled(make_plan(plain), "coir")->need;
  const Plan plan = make_plan(build);
  CHECK(pulled(plan, "coir")->need == Approx(mixed + 0.9));
  CHECK(pulled(plan, "coir")->use == "substrate");
}

TEST_CASE("water is fetched for the first day, by its source") {
  Build build = full_build();
  build.water_source = "rain";
  const Plan plan = make_plan(build);
  CHECK(pulled(plan, "water-rain")->need == Approx(plan.water.first_watering->high.v));
  build.misting = Misting{};
  build.misting->tank = 10_L;
  CHECK(pulled(make_plan(build), "water-rain")->need ==
        Approx(plan.water.first_watering->high.v + 10));
  build.water_source = "?";
  CHECK(pulled(make_plan(build), "water-unknown"));
}

TEST_CASE("what is bonded cures before the tank is filled, and is pulled at") {
  for (const char* held : {"silicone", "foam"}) {
    Build build = full_build();
    build.enclosure.background.reset();
    build.furnishings = {ledge(held)};
    const Plan plan = make_plan(build);
    CHECK(step_of(plan, "fix-furnishings") == 0);
    CHECK(step_of(plan, "ready-adhesive") < step_of(plan, "bond-furnishings"));
    CHECK(step_of(plan, "bond-furnishings") < step_of(plan, "cure-check"));
    CHECK(step_of(plan, "cure-check") < step_of(plan, "pull-test"));
    CHECK(step_of(plan, "pull-test") < step_of(plan, "place-tank"));
    const int bonded = days_of(plan, "bond-furnishings").at(0);
    CHECK(days_of(plan, "cure-check").at(0) - bonded >= 7);
    CHECK(days_of(plan, "clean-hardscape").at(0) <= bonded);
    CHECK(days_of(plan, "leak-check").at(0) <= bonded);
  }
}

TEST_CASE("what needs no curing is fixed on the day") {
  Build build = full_build();
  build.enclosure.background.reset();
  build.furnishings = {ledge("magnet")};
  const Plan plan = make_plan(build);
  CHECK(step_of(plan, "fix-furnishings") > step_of(plan, "spread-substrate"));
  CHECK(step_of(plan, "cure-check") == 0);
  CHECK(days_of(plan, "bond-furnishings").empty());
}

TEST_CASE("the dam is set, cures and is tried before anything lies against it") {
  Build build = full_build();
  build.water_area =
      WaterArea{WaterArea::Side::left, {0.3}, 100_mm, false, {}, Dam{"glass", 5_mm, {2500}}};
  const Plan plan = make_plan(build);
  CHECK(step_of(plan, "wall-off-water") < step_of(plan, "cure-check"));
  CHECK(step_of(plan, "cure-check") < step_of(plan, "test-dam"));
  CHECK(step_of(plan, "test-dam") < step_of(plan, "place-tank"));
  CHECK(days_of(plan, "test-dam").at(0) - days_of(plan, "wall-off-water").at(0) >= 7);
}
