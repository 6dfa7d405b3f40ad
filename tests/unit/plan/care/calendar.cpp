#include "plan/care/calendar.h"

#include <catch2/catch.hpp>
#include <map>

#include "plan/care/readiness.h"
#include "scheduled.h"

using namespace loamsheet;
using namespace loamsheet::tests;

namespace {

using OnDays = std::vector<int>;

Build planted_on(const std::string& date) {
  Build build = full_build();
  build.identity.plant_on = *parse_date(date);
  return build;
}

Build moved_after(int days) {
  Build build = full_build();
  build.identity.moved = true;
  build.identity.moves_on = plus_days(build.identity.plant_on, days);
  return build;
}

Build closed(Build build, std::initializer_list<size_t> weekdays) {
  for (size_t day : weekdays) build.shop.closed[day] = true;
  return build;
}

const CareRule& care(const Build& build, const std::string& id) {
  return *std::find_if(build.rules.care.begin(), build.rules.care.end(),
                       [&](const CareRule& rule) { return rule.id == id; });
}

std::string date_of(const Plan& plan, int day) {
  for (const CalendarDay& d : plan.calendar) {
    if (d.day == day) return iso(d.date);
  }
  return "";
}

}  // namespace

TEST_CASE("the plan's days run forward, each with its date and something to do") {
  const Build build = planted_on("2026-12-05");
  const Plan plan = make_plan(build);
  REQUIRE(plan.calendar.size() > 30);
  for (size_t i = 0; i < plan.calendar.size(); ++i) {
    const CalendarDay& day = plan.calendar[i];
    CHECK(day.date == plus_days(build.identity.plant_on, day.day));
    CHECK_FALSE(day.tasks.empty());
    if (i > 0) CHECK(plan.calendar[i - 1].day < day.day);
  }
}

// Dates counted by hand; reference: Gregorian calendar, ISO 8601.
TEST_CASE("month ends and leap days are counted through") {
  CHECK(date_of(make_plan(planted_on("2026-12-05")), 30) == "2027-01-04");
  CHECK(date_of(make_plan(planted_on("2024-02-01")), 28) == "2024-02-29");
  CHECK(date_of(make_plan(planted_on("2023-02-01")), 28) == "2023-03-01");
  CHECK(date_of(make_plan(planted_on("2028-02-15")), 30) == "2028-03-16");
  CHECK(date_of(make_plan(planted_on("2028-03-28")), -28) == "2028-02-29");
}

TEST_CASE("every task keeps within its window") {
  for (const Build& build : {full_build(), closed(full_build(), {6, 0}), arid_build(),
                             closed(moved_after(20), {1, 2, 3, 4, 5, 6})}) {
    const Plan plan = make_plan(build);
    for (const CareRule& rule : build.rules.care) {
      if (rule.from != CareRule::From::planting || rule.on < 0) continue;
      for (int day : days_of(plan, rule.id)) {
        INFO(rule.id << " on " << day);
        CHECK(day >= rule.on);
        CHECK(day <= rule.to.value_or(plan.ready.days));
        if (rule.while_empty) CHECK(day < plan.ready.days);
      }
    }
  }
}

TEST_CASE("work that may move is done on open days, the rest stays on its day") {
  const Build build = closed(full_build(), {6, 0});
  const Plan plan = make_plan(build);
  for (const CalendarDay& day : plan.calendar) {
    for (const CalendarTask& task : day.tasks) {
      INFO(task.task << " on " << iso(day.date));
      if (care(build, task.task).moves) CHECK_FALSE(build.shop.closed[size_t(weekday(day.date))]);
    }
  }
  CHECK(days_of(plan, "planting") == OnDays{0});
  // 2026-03-07 is a Saturday: the springtails of day 2 wait from Monday to Tuesday.
  CHECK(days_of(make_plan(full_build()), "seed-springtails") == OnDays{2});
  CHECK(days_of(plan, "seed-springtails") == OnDays{3});
}

TEST_CASE("lead-up moves earlier, and a wait is never cut short") {
  for (size_t first = 0; first < 7; ++first) {
    for (size_t second = 0; second < 7; ++second) {
      const Plan plan = make_plan(closed(full_build(), {first, second}));
      const auto day = [&](const char* task) { return days_of(plan, task).at(0); };
      CHECK(day("leak-check") - day("leak-test") >= 1);
      CHECK(day("fix-background") >= day("leak-check"));
      CHECK(day("cure-check") - day("fix-background") >= 7);
      CHECK(day("cure-check") < 0);
      CHECK(day("quarantine-plants") <= -28);
    }
  }
}

TEST_CASE("the calendar runs to the animal's day, or as long as was asked for") {
  Build build = full_build();
  build.calendar_days = 10;
  CHECK(make_plan(build).calendar.back().day == 30);
  CHECK(days_of(make_plan(build), "animal") == OnDays{30});
  build.calendar_days = 60;
  CHECK(make_plan(build).calendar.back().day == 60);
}

TEST_CASE("a humid build is watered more often at first") {
  const Plan plan = make_plan(full_build());
  CHECK(days_of(plan, "spray-twice").front() == 1);
  CHECK(days_of(plan, "spray-twice").back() == 14);
  CHECK(days_of(plan, "spray").front() == 15);
}

TEST_CASE("an arid build is not misted, drained or watched for mould") {
  Build build = arid_build();
  build.misting = Misting{};
  const Plan plan = make_plan(build);
  for (const char* task : {"mist", "spray", "spray-twice", "spray-temperate", "water-in",
                           "check-reservoir", "watch-mould", "seed-springtails", "leak-test"}) {
    INFO(task);
    CHECK(days_of(plan, task).empty());
  }
  CHECK(days_of(plan, "water-dry") == OnDays{7, 19});
}

TEST_CASE("misting follows the water plan") {
  Build build = full_build();
  Plan plan;
  plan.upkeep.emplace();
  WaterDay misted, dry;
  misted.day = 1, misted.mistings = 3, misted.each = 20;
  dry.day = 2;
  plan.upkeep->days = {misted, dry};
  CalendarTask task;
  task.amount = "mist";
  CHECK(fill_amount(build, plan, 1, task));
  CHECK(task.amount == "mist-seconds");
  CHECK(task.args.size() == 3);
  task.amount = "mist";
  CHECK_FALSE(fill_amount(build, plan, 2, task));
  task.amount = "mist";
  CHECK(fill_amount(build, plan, 9, task));
  CHECK(task.amount.empty());
}

TEST_CASE("a mist tank is filled before it is empty, and before its water is stale") {
  Build build = full_build();
  build.misting.emplace();
  build.misting->nozzles = 2;
  build.misting->flow.range = {{90}, {90}};
  build.misting->tank = Litres{5};
  Plan plan = make_plan(build);
  REQUIRE(plan.upkeep);
  for (const auto& [lasts, every] : std::map<double, int>{{0.4, 1}, {3.8, 3}, {25.6, 14}}) {
    plan.upkeep->fill_every = lasts;
    plan.calendar = plan_calendar(build, plan);
    const auto days = days_of(plan, "fill-mister");
    REQUIRE(days.size() >= 2);
    CHECK(days[0] == every);
    CHECK(days[1] == 2 * every);
  }
}

TEST_CASE("a moved tank is drained before and settled after") {
  const Plan plan = make_plan(moved_after(20));
  CHECK(days_of(plan, "drain-for-move") == OnDays{19});
  CHECK(days_of(plan, "move") == OnDays{20});
  CHECK(days_of(plan, "settle-after-move") == OnDays{21});
  CHECK(days_of(plan, "animal") == OnDays{50});
  CHECK(days_of(make_plan(full_build()), "move").empty());
}

TEST_CASE("gauges are read for the seven days before the animal's day") {
  CHECK(days_of(make_plan(full_build()), "read-band") == OnDays{23, 24, 25, 26, 27, 28, 29});
  CHECK(days_of(make_plan(full_build()), "readiness-check") == OnDays{29});
}

// Common practice: 4 weeks at least, 6 for climbing and heavy animals, 8 for diggers.
TEST_CASE("the tank stays empty longer for animals that disturb it") {
  const auto ready = [](KeptAnimal animal, const std::string& growth = "medium") {
    Build build = full_build();
    build.kept = {std::move(animal)};
    build.plants = {plant(1, growth)};
    return plan_ready(build);
  };
  CHECK(ready(kept(0.01, false, false)).days == 30);
  CHECK(ready(kept(0.01, true, false)).days == 42);
  CHECK(ready(kept(0.50, false, false)).days == 42);
  CHECK(ready(kept(0.01, false, true)).days == 56);
  CHECK(ready(kept(0.50, true, true)).days == 56);
  CHECK(ready(kept(0.01, true, false), "slow").days == 56);
  CHECK(ready(kept(0.01, true, false), "slow").because ==
        std::vector<std::string>{"climbing-animal", "slow-plants"});
}

TEST_CASE("a tree dweller without claws counts as a climber only when it is heavy enough to pull") {
  for (const auto& [mass, days] : std::map<double, int>{{0.005, 30}, {0.03, 42}}) {
    Build build = full_build();
    build.kept = {kept(mass, false, false)};
    build.kept[0].facts.lifestyle = fact(std::string("arboreal"));
    CHECK(plan_ready(build).days == days);
  }
}

TEST_CASE("readiness is counted again from the move, and waits for quarantine") {
  Build build = moved_after(42);
  CHECK(plan_ready(build).days == 72);
  CHECK(plan_ready(build).because == std::vector<std::string>{"after-move"});
  build.kept[0].acquired = plus_days(build.identity.plant_on, 60);
  CHECK(plan_ready(build).days == 90);
  CHECK(plan_ready(build).because.front() == "quarantine");
  build.kept[0].acquired = plus_days(build.identity.plant_on, 42);
  CHECK(plan_ready(build).because == std::vector<std::string>{"after-move"});
}

TEST_CASE("the longest cure is that of what is bonded, and none where nothing is") {
  Build build = full_build();
  for (Furnishing& thing : build.furnishings) thing.fixed_by = "wedged";
  if (build.enclosure.background) build.enclosure.background->fixed_by = "wedged";
  CHECK(longest_cure(build) == 0);
  REQUIRE(build.enclosure.background);
  build.enclosure.background->fixed_by = "silicone";
  CHECK(longest_cure(build) == 7);
}

TEST_CASE("no rule brings the animal's day below thirty days") {
  for (int move : {0, 1, 10, 200}) {
    Build build = move == 0 ? full_build() : moved_after(move);
    build.rules.readiness.clear();
    CHECK(plan_ready(build).days == move + 30);
  }
}
