// Which plants suit ten animals across the groups, to be read one by one.
#include <catch2/catch.hpp>
#include <map>
#include <set>

#include "base/text.h"
#include "catalogue/living.h"
#include "data/suiting.h"
#include "examples.h"
#include "plan/fit/fit.h"
#include "world/world.h"

using namespace loamsheet;
using namespace loamsheet::tests;

namespace {

const std::vector<std::string> animals{
    "correlophus-ciliatus",  "gekko-gecko",           "eublepharis-macularius", "pogona-vitticeps",
    "chamaeleo-calyptratus", "pantherophis-guttatus", "dendrobates-tinctorius", "ranoidea-caerulea",
    "salamandra-salamandra", "testudo-hermanni"};

const Catalogue& catalogue() {
  static const Catalogue read = [] { return read_catalogue(*real_world()).value.value(); }();
  return read;
}

// "with caution (plant-sharp, plant-too-delicate)"; notes are not among the reasons.
std::string heading(const Suitability& found) {
  std::set<std::string> rules;
  for (const Finding& reason : found.reasons) {
    if (reason.weight != Weight::note) rules.insert(reason.rule);
  }
  const std::string because = join(std::vector<std::string>(rules.begin(), rules.end()), ", ");
  if (found.suits == Suits::yes) return "1 suit";
  return (found.suits == Suits::no ? "3 do not suit (" : "2 with caution (") + because + ')';
}

std::string wrapped(const std::vector<std::string>& words) {
  std::string out, line = "     ";
  for (const std::string& word : words) {
    if (line.size() + word.size() > 98) out += line + '\n', line = "     ";
    line += ' ' + word;
  }
  return out + line + '\n';
}

std::string lists_for(const std::string& id) {
  const Build build = build_around(catalogue(), id).value.value();
  std::map<std::string, std::vector<std::string>> lists;
  for (const std::string& plant : catalogue().plants.ids()) {
    const auto facts = read_plant(catalogue(), plant);
    REQUIRE(facts.value);
    lists[heading(suitability(build, *facts.value, {}))].push_back(plant);
  }
  std::string out = id + ", " + build.kept.front().facts.name + '\n';
  for (const auto& [head, plants] : lists) {
    out += "  " + head.substr(2) + ": " + std::to_string(plants.size()) + '\n' + wrapped(plants);
  }
  return out + '\n';
}

}  // namespace

TEST_CASE("the plants that suit ten animals are those that were read one by one") {
  std::string now;
  for (const std::string& animal : animals) now += lists_for(animal);
  hold(now, "suits.txt");
}
