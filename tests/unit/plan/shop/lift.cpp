#include "plan/shop/lift.h"

#include <algorithm>
#include <catch2/catch.hpp>

#include "builds.h"
#include "plan/plan.h"

using namespace loamsheet;
using namespace loamsheet::tests;

namespace {

LiftPlan lift_of(Kilograms empty) {
  return plan_lift(box_build(), empty);
}

bool says(const Build& build, const std::string& rule) {
  const Plan plan = make_plan(build);
  return std::any_of(plan.findings.begin(), plan.findings.end(),
                     [&](const Finding& f) { return f.rule == rule; });
}

}  // namespace

TEST_CASE("the ideal lift is 23 kg, and beyond its limits the equation allows nothing") {
  CHECK(weight_limit({}).v == Approx(23));
  CHECK(weight_limit({.horizontal = 64}).v == 0);
  CHECK(weight_limit({.vertical = 176}).v == 0);
  CHECK(weight_limit({.travel = 176}).v == 0);
  CHECK(weight_limit({.twist = 136}).v == 0);
  CHECK(weight_limit({.per_minute = 16}).v == 0);
  CHECK(weight_limit({.vertical = 74, .per_minute = 13}).v == 0);
}

TEST_CASE("the frequency is read between the rows of the table") {
  CHECK(weight_limit({.per_minute = 3.5}).v == Approx(23 * 0.86));
  CHECK(weight_limit({.per_minute = 0.1}).v == Approx(23));
}

// 45 cm deep, from the floor to a stand 75 cm high: 23 kg x 25/47.5 x 0.775 x 0.88 x 0.9.
TEST_CASE("the limit is that of the harder end, held at the sides") {
  const LiftPlan plan = lift_of(36_kg);
  CHECK(plan.task.vertical == 0);
  CHECK(plan.task.horizontal == Approx(47.5));
  CHECK(plan.limit.v == Approx(23 * 25 / 47.5 * 0.775 * 0.88 * 0.9));
  CHECK(*plan.empty_index == Approx(36 / plan.limit.v));
}

TEST_CASE("a higher stand is harder to lift onto") {
  Build build = box_build();
  build.enclosure.stand_height = 1600_mm;
  CHECK(plan_lift(build, 36_kg).limit < lift_of(36_kg).limit);
  build.enclosure.stand_height = 0_mm;
  CHECK(plan_lift(build, 36_kg).limit > lift_of(36_kg).limit);
}

// At the ends each may lift 23 x 0.775 x 0.88 x 0.9 = 14.1 kg: two 18.8 kg, three 21.2 kg.
TEST_CASE("people are added until the tank is light enough, three at most") {
  CHECK(lift_of(7_kg).people == 1);
  CHECK(lift_of(18_kg).people == 2);
  CHECK(lift_of(20_kg).people == 3);
  CHECK(lift_of(20_kg).by_hand);
  CHECK_FALSE(lift_of(22_kg).by_hand);
}

TEST_CASE("a tank too deep to reach around has no index, and is not for one person") {
  Build build = box_build();
  build.enclosure.depth = 900_mm;
  const LiftPlan plan = plan_lift(build, 5_kg);
  CHECK_FALSE(plan.empty_index);
  CHECK(plan.people == 2);
}

TEST_CASE("who must not lift alone is told so") {
  Build build = box_build();
  for (const auto& [mass, rule] :
       {std::pair{7.0, ""}, {18.0, "lift-needs-two"}, {30.0, "lift-too-heavy"}}) {
    build.enclosure.stated_empty_mass = Kilograms{mass};
    CHECK(says(build, "lift-needs-two") == (std::string(rule) == "lift-needs-two"));
    CHECK(says(build, "lift-too-heavy") == (std::string(rule) == "lift-too-heavy"));
  }
}
