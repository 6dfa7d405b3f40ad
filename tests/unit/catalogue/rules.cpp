#include "catalogue/rules.h"

#include <catch2/catch.hpp>
#include <map>
#include <set>

#include "catalogue/wording.h"
#include "world/world.h"

using namespace loamsheet;

namespace {

TaskRules real() {
  auto world = real_world();
  auto rules = read_rules(*world);
  REQUIRE(rules.value);
  CHECK(rules.messages.empty());
  return std::move(*rules.value);
}

std::string said(const std::string& work, const std::string& care = "") {
  MemoryWorld world;
  world.files["templates/tasks.yaml"] = "work:" + (work.empty() ? " {}\n" : '\n' + work) +
                                        "care:" + (care.empty() ? " {}\n" : '\n' + care) +
                                        "readiness: {}\n";
  std::string out;
  for (const auto& d : read_rules(world).messages) {
    out += std::to_string(d.where.line) + ": " + d.message +
           (d.hint.empty() ? "" : " (" + d.hint + ")") + '\n';
  }
  return out;
}

}  // namespace

TEST_CASE("the rules read without a word") {
  const TaskRules rules = real();
  CHECK(rules.work.size() > 30);
  CHECK(rules.care.size() > 30);
  CHECK(rules.readiness.size() >= 5);
}

TEST_CASE("steps that wait for one another are named as a ring, with their place") {
  CHECK(said("  a: {group: tank, minutes: 1, after: [c]}\n"
             "  b: {group: tank, minutes: 1, after: [a]}\n"
             "  c: {group: tank, minutes: 1, after: [b]}\n") ==
        "2: tasks wait for one another: a after c after b after a\n");
  CHECK(said("  a: {group: tank, minutes: 1, after: [a]}\n") ==
        "2: tasks wait for one another: a after a\n");
}

TEST_CASE("a step that waits for none of the steps is an error with the name that was meant") {
  CHECK(said("  rinse: {group: tank, minutes: 1}\n"
             "  spread: {group: tank, minutes: 1, after: [rinze]}\n") ==
        "3: unknown task 'rinze' in 'after' (did you mean 'rinse'?)\n");
  CHECK(said("", "  look: {on: -1, after: [soaking]}\n") ==
        "3: unknown task 'soaking' in 'after'\n");
}

TEST_CASE("a need is a tool, a supply or a use of the pull list") {
  CHECK(said("  a: {group: tank, minutes: 1, needs: [substrate]}\n").empty());
  CHECK(said("  a: {group: tank, minutes: 1, needs: [substrat]}\n") ==
        "2: unknown need 'substrat' in 'needs' (did you mean 'substrate'?)\n");
  CHECK(said("", "  look: {on: 1, needs: [binoculars]}\n") ==
        "3: unknown need 'binoculars' in 'needs'\n");
}

TEST_CASE("every tool and every supply is needed by a task") {
  const TaskRules rules = real();
  std::set<std::string> needs;
  for (const WorkRule& rule : rules.work) needs.insert(rule.needs.begin(), rule.needs.end());
  for (const CareRule& rule : rules.care) needs.insert(rule.needs.begin(), rule.needs.end());
  for (const std::string& tool : rules.tools) CHECK(needs.count(tool) == 1);
  for (const Supply& supply : rules.supplies) CHECK(needs.count(supply.id) == 1);
}

TEST_CASE("a window that ends before it comes again is an error") {
  CHECK(said("", "  look: {on: 5, to: 4, every: 1}\n") == "3: 'look' ends before it comes again\n");
  CHECK(said("", "  look: {on: 5, to: 9}\n") == "3: 'look' ends before it comes again\n");
}

TEST_CASE("every rule has its sentences") {
  auto world = real_world();
  const Wording words = read_wording(*world, "en", UnitSystem::metric).value.value();
  const TaskRules rules = real();
  for (const WorkRule& rule : rules.work) {
    INFO(rule.id);
    CHECK((!rule.each.empty() || words.knows("order." + rule.id)));
  }
  for (const CareRule& rule : rules.care) {
    INFO(rule.id);
    CHECK(words.knows("calendar.task." + rule.id));
    CHECK(words.knows("calendar.short." + rule.id));
  }
  for (const ReadinessRule& rule : rules.readiness) {
    INFO(rule.id);
    CHECK(words.knows("calendar.because." + rule.id));
  }
  for (const CarePoint& point : rules.points) {
    INFO(point.id);
    CHECK(words.knows("care.point." + point.id));
  }
}
