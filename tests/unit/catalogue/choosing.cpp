#include "catalogue/choosing.h"

#include <algorithm>
#include <catch2/catch.hpp>
#include <set>

#include "catalogue/catalogue.h"
#include "world/world.h"

using namespace loamsheet;

namespace {

ChoosingRules real() {
  auto world = real_world();
  Sink sink;
  const ChoosingRules rules = read_choosing(*world, sink);
  CHECK(sink.take().empty());
  return rules;
}

}  // namespace

TEST_CASE("every role of a planting is weighed, and every habit plays one") {
  const ChoosingRules rules = real();
  std::set<std::string> roles, habits;
  for (const auto& [name, rule] : rules.roles) {
    roles.insert(name);
    for (const auto& habit : rule.habits) CHECK(habits.insert(habit).second);
  }
  CHECK(roles == std::set<std::string>{"backdrop", "focal", "ground", "middle", "moss", "mounted",
                                       "trailer"});
  CHECK(habits == std::set<std::string>{"climber", "creeper", "epiphyte", "focal", "low", "moss",
                                        "tall", "trailer"});
}

TEST_CASE("a role is worth no less than a plant, and a caution costs more than both") {
  const ChoosingRules rules = real();
  CHECK(rules.place + rules.climate == Approx(1));
  for (const auto& [name, rule] : rules.roles) {
    INFO(name);
    CHECK(rule.filled >= rules.place + rules.climate);
    CHECK(rules.caution > rule.filled + rules.place + rules.climate);
  }
}

TEST_CASE("a role's habits are those that a plant can have") {
  MemoryWorld world;
  world.files["templates/choosing.yaml"] =
      "worth:\n  place: {is: 1, why: a}\n  climate: {is: 0, why: a}\n"
      "  same_leaf: {is: 0, why: a}\n  caution: {is: 3, why: a}\n  least_fit: {is: 0, why: a}\n"
      "roles:\n  backdrop: {habits: [climbing], filled: 1, crowded: 0, share: 0 %, why: a}\n";
  Sink sink;
  read_choosing(world, sink);
  const auto messages = sink.take();
  REQUIRE(messages.size() == 1);
  CHECK(messages[0].where.line == 8);
}
