#include "plan/care/order.h"

#include <catch2/catch.hpp>

#include "plan/care/care.h"
#include "scheduled.h"

using namespace loamsheet;
using namespace loamsheet::tests;

namespace {

std::vector<Build> builds() {
  std::vector<Build> all{full_build(), arid_build(), box_build(), full_build(BuildKind::temperate),
                         full_build(BuildKind::burrowing)};
  Build raised = full_build(), bare = full_build();
  raised.layers.drainage.kind = "raised-floor";
  bare.plants.clear(), bare.lamps.clear(), bare.crew.clear(), bare.standing.clear();
  bare.enclosure.background.reset(), bare.layers.litter.reset();
  all.push_back(raised), all.push_back(bare);
  return all;
}

PlacedPlant placed(int number, SiteKind site, Position at, double height) {
  PlacedPlant plant;
  plant.number = number, plant.placed = true;
  plant.site = site, plant.at = at, plant.height = Millimetres{height};
  return plant;
}

std::vector<int> sequence(std::vector<PlacedPlant> plants) {
  Plan plan;
  plan.planting.emplace();
  plan.planting->plants = std::move(plants);
  std::vector<int> numbers;
  for (const PlantStep& step : plant_sequence(box_build(), plan)) numbers.push_back(step.number);
  return numbers;
}

}  // namespace

TEST_CASE("steps are numbered from 1 and come after all that they wait for") {
  for (const Build& build : builds()) {
    const Plan plan = make_plan(build);
    CHECK(plan.order.empty() == build.rules.work.empty());
    int number = 0;
    for (const Step& step : plan.order) {
      INFO(step.task);
      CHECK(step.number == ++number);
      CHECK(step.minutes > 0);
      for (int before : step.after) CHECK((before >= 1 && before < step.number));
    }
  }
}

TEST_CASE("what a rule names comes first wherever the build has both") {
  for (const Build& build : builds()) {
    const Plan plan = make_plan(build);
    for (const WorkRule& rule : build.rules.work) {
      const int own = step_of(plan, rule.id);
      for (const std::string& before : rule.after) {
        INFO(rule.id << " after " << before);
        if (own > 0) CHECK(step_of(plan, before) < own);
      }
    }
  }
}

TEST_CASE("a step hands on what a missing one waits for") {
  Build build = full_build();
  build.layers.separator.reset();
  const Plan plan = make_plan(build);
  CHECK(step_of(plan, "lay-separator") == 0);
  CHECK(step_of(plan, "spread-drainage") < step_of(plan, "spread-substrate"));
  WorkRule first, gone, last;
  first.id = "first", first.group = "finish";
  gone.id = "gone", gone.group = "tank", gone.after = {"first"}, gone.when.all = {"water-area"};
  last.id = "last", last.group = "tank", last.after = {"gone"};
  build.rules.work = {first, gone, last};
  const Plan handed = make_plan(build);
  CHECK(step_of(handed, "first") == 1);
  CHECK(step_of(handed, "last") == 2);
  CHECK(handed.order[1].after == std::vector<int>{1});
}

TEST_CASE("steps of a group stand together, so that each has one heading") {
  for (const Build& build : builds()) {
    const auto groups = task_groups();
    size_t at = 0;
    for (const Step& step : make_plan(build).order) {
      const size_t group =
          static_cast<size_t>(std::find(groups.begin(), groups.end(), step.group) - groups.begin());
      INFO(step.task);
      CHECK(group >= at);
      at = group;
    }
  }
}

TEST_CASE("an arid build has neither drainage nor misting nor a first watering") {
  const Plan plan = make_plan(arid_build());
  for (const char* task : {"rinse-granules", "spread-drainage", "lay-separator", "mark-waterline",
                           "water-in", "check-standing", "set-mister", "seed-springtails"}) {
    INFO(task);
    CHECK(step_of(plan, task) == 0);
  }
  CHECK(step_of(plan, "spread-substrate") > 0);
  CHECK(step_of(plan, "plant-dry") > step_of(plan, "plant-3"));
}

TEST_CASE("plants go in from the top down, then from the back, tall before low") {
  CHECK(sequence({placed(1, SiteKind::floor, {100, 50, 80}, 100),
                  placed(2, SiteKind::floor, {100, 400, 80}, 100),
                  placed(3, SiteKind::floor, {300, 420, 80}, 300),
                  placed(4, SiteKind::mount, {300, 440, 200}, 50),
                  placed(5, SiteKind::pocket, {300, 440, 350}, 50)}) ==
        std::vector<int>{5, 4, 3, 2, 1});
}

TEST_CASE("a plant that has no place has no step") {
  PlacedPlant homeless = placed(1, SiteKind::floor, {}, 10);
  homeless.placed = false;
  CHECK(sequence({homeless, placed(2, SiteKind::floor, {}, 10)}) == std::vector<int>{2});
}

TEST_CASE("a condition that is none is an error at its rule, with the nearest that is one") {
  TaskRules rules;
  rules.work.push_back({.id = "a", .when = {{"drainage"}, {"moss"}}, .where = place(3, 3)});
  Sink sink;
  check_conditions(rules, sink);
  CHECK(sink.messages().empty());
  rules.points.push_back({"b", "normal", {{}, {"drainige"}}, place(9, 3)});
  check_conditions(rules, sink);
  REQUIRE(sink.messages().size() == 1);
  CHECK(sink.messages()[0].where.line == 9);
  CHECK(sink.messages()[0].message == "unknown condition 'drainige' in 'unless'");
  CHECK(sink.messages()[0].hint == "did you mean 'drainage'?");
}

TEST_CASE("every condition, slot and amount that a rule may name is worked out") {
  // A name that is none holds for no build; each of these holds for one of them.
  std::vector<Build> all = builds();
  Build other = full_build();
  other.kept = {kept(1.0, true, true)};
  other.plants[0] = plant(1, "slow");
  other.water_area = WaterArea{WaterArea::Side::left, {0.3}, 100_mm};
  other.misting = Misting{};
  other.heaters.push_back({"mat", 20, true, {}});
  other.standing.push_back(other.standing[0]);
  other.standing.back().on_base = false;
  Furnishing branch;
  branch.kind = "branch";
  other.furnishings.push_back(branch);
  Furnishing ledge;
  ledge.kind = "ledge", ledge.fixed_by = "silicone";
  other.furnishings.push_back(ledge);
  other.layers.moss = MossLayer{bulk("sheet-moss", 30, 0.30, 0.10), 20_mm, Fraction{0.2}, {}};
  other.layers.substrate.terraces = {{200_mm, 80_mm, "", {}}};
  other.amendments = {{"organic-starter-feed", 3, false, {0.5}}};
  other.lamps[0].kind = "uv-bar";
  other.identity.moved = true;
  other.identity.moves_on = plus_days(other.identity.plant_on, 20);
  other.replaced.push_back({1, {}, other.identity.plant_on, {}});
  all.push_back(other);
  for (const std::string& name : task_conditions()) {
    INFO(name);
    CHECK(std::any_of(all.begin(), all.end(),
                      [&](const Build& b) { return condition_holds(name, b); }));
    CHECK(std::any_of(all.begin(), all.end(),
                      [&](const Build& b) { return !condition_holds(name, b); }));
  }
}
