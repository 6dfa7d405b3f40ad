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
  const auto rules = choosing_in(*choosing_file(*world, sink));
  CHECK(rules.messages.empty());
  return rules.value.value();
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
  CHECK(rules.place + rules.home + rules.sturdy == Approx(1));
  for (const auto& [name, rule] : rules.roles) {
    INFO(name);
    CHECK(rule.filled >= 1);
    CHECK(rules.caution > rule.filled + 1);
  }
}

TEST_CASE("dry, middling and damp ground each say what they are to every plant") {
  const auto ground = real().climate.ground;
  CHECK(ground.at("dry").at("dry") > ground.at("dry").at("moist"));
  CHECK(ground.at("between").at("moderate") > ground.at("between").at("wet"));
  CHECK(ground.at("damp").at("moist") > ground.at("damp").at("dry"));
}

TEST_CASE("a weight that is misspelt or left out, and a habit that no plant has, are errors") {
  const auto said = [](const std::string& from, const std::string& to) {
    auto world = real_world();
    Sink sink;
    std::string text(choosing_file(*world, sink)->bytes());
    REQUIRE(text.find(from) != std::string::npos);
    text.replace(text.find(from), from.size(), to);
    std::set<std::string> messages;
    const auto rules = choosing_in({"templates/choosing.yaml", std::move(text)});
    for (const Diagnostic& message : rules.messages) messages.insert(message.message);
    return messages;
  };
  CHECK(said("  sturdy: ", "  sturdi: ") ==
        std::set<std::string>{"unknown weight 'sturdi'", "no weight 'sturdy'"});
  CHECK(said("[climber, tall]", "[climbing, tall]").size() == 1);
}
