#include "plan/air/air.h"

#include <algorithm>
#include <catch2/catch.hpp>
#include <cmath>

#include "builds.h"
#include "plan/air/misting.h"
#include "plan/fill/constants.h"
#include "plan/fill/fill.h"
#include "plan/fill/ground.h"

using namespace loamsheet;
using namespace loamsheet::tests;

namespace {

// Air that takes so many millilitres an hour, day and night, the year round.
AirPlan air_taking(double ml_an_hour) {
  AirState state;
  state.lost = {{ml_an_hour / 1000}, {ml_an_hour / 1000}};
  return {{state, state}, {state, state}};
}

Misting pump() {
  Misting mister;
  mister.nozzles = 2;
  mister.flow.range = {{0.09}, {0.09}};
  mister.tank = 10_L;
  return mister;
}

Misting bottle() {
  Misting mister;
  mister.by_hand = true;
  mister.pull.range = {{0.0008}, {0.001}};
  return mister;
}

Build misted(BuildKind kind = BuildKind::humid) {
  Build build = box_build();
  build.kind = kind;
  build.misting = pump();
  return build;
}

UpkeepPlan upkeep(const Build& build, double ml_an_hour, int through = 42) {
  return *plan_upkeep(build, plan_layers(build, ground(build)), air_taking(ml_an_hour), through);
}

int mistings(const UpkeepPlan& plan, int from, int to) {
  int sum = 0;
  for (int day = from; day <= to; ++day) sum += plan.days[static_cast<size_t>(day)].mistings;
  return sum;
}

}  // namespace

TEST_CASE("nothing is misted without a mister") {
  const Build build = box_build();
  CHECK_FALSE(plan_upkeep(build, plan_layers(build, ground(build)), air_taking(5), 35));
}

TEST_CASE("the planting day holds the first watering") {
  const UpkeepPlan plan = upkeep(misted(), 5);
  REQUIRE(plan.days.size() == 43);
  const double deficit = 0.405 * 65 * 0.10;  // both parts lack a tenth of their volume
  CHECK(plan.days[0].watered.v == Approx(deficit * 1.1));
  // Three short mistings are rounded up by less than a second each, and 3 mL come in a second.
  CHECK(plan.days[0].drained.v >= deficit * 0.1);
  CHECK(plan.days[0].drained.v < deficit * 0.1 + 3 * 0.003);
  CHECK(plan.days[1].watered.v == 0);
}

TEST_CASE("mistings are frequent at first and taper to the regime") {
  const UpkeepPlan plan = upkeep(misted(), 5);
  CHECK(mistings(plan, 0, 14) == 45);
  CHECK(mistings(plan, 15, 27) < 39);
  CHECK(mistings(plan, 15, 27) > 13);
  CHECK(mistings(plan, 28, 42) == 15);
  CHECK(plan.regime_from == 28);
}

TEST_CASE("a timer is set once a week, and long bursts in steps of five seconds") {
  Build build = misted();
  build.identity.plant_on = *parse_date("2026-03-07");  // a Saturday
  const UpkeepPlan plan = upkeep(build, 40);
  int settings = 1;
  for (size_t day = 1; day < plan.days.size(); ++day) {
    INFO(day);
    const WaterDay &before = plan.days[day - 1], &now = plan.days[day];
    const bool set = now.mistings != before.mistings || now.each != before.each;
    if (set) CHECK(day % 7 == 2);
    settings += set;
    CHECK(now.each >= 30);
    CHECK(std::fmod(now.each, 5) == 0);
  }
  CHECK(settings > 2);
}

TEST_CASE("an animal of wet air is misted for twice a day") {
  Build build = misted();
  KeptAnimal frog;
  frog.facts.humidity = Fact<Range<Fraction>>{{{0.75}, {0.95}}, {}};
  build.kept.push_back(frog);
  CHECK(routine_for(build).later == 2);
  CHECK(mistings(upkeep(build, 10), 30, 39) == 20);
}

TEST_CASE("a dry build is left alone for a week and then misted seldom and lightly") {
  const UpkeepPlan plan = upkeep(misted(BuildKind::arid), 5);
  CHECK(plan.days[0].watered.v == 0);
  CHECK(mistings(plan, 0, 6) == 0);
  CHECK(mistings(plan, 7, 42) <= 3);
  for (const WaterDay& day : plan.days) CHECK(day.mist.v <= 0.405 * 0.2 + 1e-9);
}

TEST_CASE("the substrate stays between refill point and field capacity") {
  const Build build = misted();
  const double full = 0.405 * 65 * (0.75 * 0.25 + 0.25 * 0.20);
  for (double taken : {1.0, 5.0, 20.0}) {
    const UpkeepPlan plan = upkeep(build, taken);
    REQUIRE(plan.days.size() > 40);
    for (const WaterDay& day : plan.days) {
      CHECK(day.stored.v <= full + 1e-9);
      CHECK(day.stored.v >= full * routine_for(build).refill.v - 1e-9);
    }
  }
}

TEST_CASE("water never climbs to the mesh or past the high-water mark by misting") {
  const UpkeepPlan plan = upkeep(misted(), 15, 90);
  REQUIRE(plan.days.size() > 80);
  for (const WaterDay& day : plan.days) {
    CHECK(day.standing <= constants::high_water);
  }
}

TEST_CASE("a misting is whole seconds of the pump, or whole pulls of the trigger") {
  Build build = misted();
  for (const bool by_hand : {false, true}) {
    build.misting = by_hand ? bottle() : pump();
    const UpkeepPlan plan = upkeep(build, 8);
    CHECK(plan.by_hand == by_hand);
    for (const WaterDay& day : plan.days) {
      CHECK(day.each == std::floor(day.each));
      CHECK(day.mist.v == Approx(day.mistings * day.each * per_stroke(*build.misting).v));
    }
  }
}

TEST_CASE("a measured loss stands in the place of the model's") {
  Build build = misted();
  build.measured_loss = Range<Litres>{{0.1}, {0.14}};
  CHECK(upkeep(build, 500).days[10].lost.v == Approx(0.12));
}

TEST_CASE("a dry substrate gives its water up more slowly") {
  Build build = misted(BuildKind::arid);
  const UpkeepPlan plan = upkeep(build, 40);
  CHECK(plan.days[6].lost < plan.days[5].lost);
}

TEST_CASE("the mist tank lasts until its water is misted") {
  const UpkeepPlan plan = upkeep(misted(), 10);
  double wettest = 0;
  for (const WaterDay& day : plan.days) wettest = std::max(wettest, day.mist.v);
  CHECK(*plan.fill_every == Approx(10 / wettest));
  Build build = misted();
  build.misting->tank.reset();
  CHECK_FALSE(upkeep(build, 10).fill_every);
  CHECK_FALSE(upkeep(build, 10).stuck_on_overflow);
}

TEST_CASE("a stuck timer overflows by what no pore can take") {
  Build build = misted();
  CHECK(upkeep(build, 10).stuck_on_overflow->v == 0);
  build.misting->tank = 40_L;
  const UpkeepPlan plan = upkeep(build, 10);
  double standing = 0;
  for (const WaterDay& day : plan.days) standing += day.drained.v;
  CHECK(plan.stuck_on_overflow->v == Approx(40 - (0.405 * 65 + 0.405 * 50) * 0.45 + standing));
  build.misting = bottle();
  CHECK_FALSE(upkeep(build, 10).stuck_on_overflow);
}
