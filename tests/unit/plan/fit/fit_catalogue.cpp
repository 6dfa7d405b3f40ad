// Every animal of the catalogue against every plant of it.
#include <catch2/catch.hpp>
#include <map>

#include "catalogue/living.h"
#include "living.h"
#include "plan/fit/fit.h"

using namespace loamsheet;
using namespace loamsheet::tests;

namespace {

Build around(const std::string& animal) {
  static const std::map<std::string, BuildKind> kinds{{"humid", BuildKind::humid},
                                                      {"temperate", BuildKind::temperate},
                                                      {"arid", BuildKind::arid},
                                                      {"burrowing", BuildKind::burrowing},
                                                      {"semi-aquatic", BuildKind::semi_aquatic}};
  Build build = weighed_box();
  build.kept.emplace_back();
  build.kept.back().facts = read_animal(real_catalogue(), animal).value.value();
  build.kind = kinds.at(build.kept.back().facts.build_kind->value);
  return build;
}

Suits suits(const std::string& animal, const std::string& plant) {
  return suitability(around(animal), read_plant(real_catalogue(), plant).value.value(), {}).suits;
}

std::string source_of(const Finding& finding) {
  for (const auto& [slot, value] : finding.args) {
    if (slot == "source") return std::get<std::string>(value);
  }
  return "";
}

}  // namespace

TEST_CASE("no plant of the catalogue is stopped on what is only from memory") {
  std::vector<Plant> plants;
  for (const std::string& id : real_catalogue().plants.ids()) {
    plants.push_back(read_plant(real_catalogue(), id).value.value());
  }
  int stops = 0;
  for (const std::string& id : real_catalogue().animals.ids()) {
    const Build build = around(id);
    for (const Plant& plant : plants) {
      for (const Finding& finding : suitability(build, plant, {}).reasons) {
        if (finding.weight != Weight::stop) continue;
        INFO(id << " and " << plant.id << ": " << finding.rule);
        CHECK_FALSE(source_of(finding).empty());
        CHECK(source_of(finding).find("from memory") == std::string::npos);
        ++stops;
      }
    }
  }
  CHECK(stops > 100);
}

// What builders commonly plant for these animals; common practice.
TEST_CASE("staple plants stay usable with the animals they are commonly kept with") {
  const std::vector<std::pair<std::string, std::string>> staples{
      {"correlophus-ciliatus", "epipremnum-aureum"},
      {"correlophus-ciliatus", "ficus-pumila"},
      {"correlophus-ciliatus", "dracaena-trifasciata"},
      {"correlophus-ciliatus", "neoregelia-carolinae"},
      {"phelsuma-grandis", "dracaena-trifasciata"},
      {"lepidodactylus-lugubris", "neoregelia-fireball"},
      {"dendrobates-tinctorius", "neoregelia-carolinae"},
      {"dendrobates-tinctorius", "philodendron-hederaceum"},
      {"ranitomeya-imitator", "neoregelia-fireball"},
      {"agalychnis-callidryas", "epipremnum-aureum"},
      {"ranoidea-caerulea", "epipremnum-aureum"},
      {"chamaeleo-calyptratus", "ficus-benjamina"},
      {"chamaeleo-calyptratus", "hibiscus-rosa-sinensis"},
      {"chamaeleo-calyptratus", "epipremnum-aureum"},
      {"chamaeleo-calyptratus", "schefflera-arboricola"},
      {"furcifer-pardalis", "schefflera-arboricola"},
      {"eublepharis-macularius", "haworthiopsis-attenuata"},
      {"eublepharis-macularius", "dracaena-trifasciata"},
      {"tribolonotus-gracilis", "ficus-pumila"},
      {"salamandra-salamandra", "hypnum-cupressiforme"},
      {"testudo-hermanni", "taraxacum-officinale"},
      {"testudo-hermanni", "plantago-lanceolata"},
      {"pogona-vitticeps", "opuntia-ficus-indica"}};
  for (const auto& [animal, plant] : staples) {
    INFO(animal << " and " << plant);
    CHECK(suits(animal, plant) != Suits::no);
  }
}

TEST_CASE("one plant is a note for who eats insects and a stop for who eats leaves") {
  CHECK(suits("pantherophis-guttatus", "epipremnum-aureum") == Suits::yes);
  CHECK(suits("correlophus-ciliatus", "epipremnum-aureum") == Suits::yes);
  CHECK(suits("testudo-hermanni", "epipremnum-aureum") == Suits::no);
  CHECK(suits("chamaeleo-calyptratus", "epipremnum-aureum") == Suits::with_caution);
  CHECK(suits("chamaeleo-calyptratus", "dieffenbachia-seguine") == Suits::no);
}

// Cool nights, dry air, air that never dries, dry ground: what dies of it. Common practice.
TEST_CASE("a plant of another climate is never said to suit") {
  const std::vector<std::pair<std::string, std::string>> strangers{
      {"salamandra-salamandra", "phalaenopsis"},
      {"salamandra-salamandra", "maranta-leuconeura"},
      {"salamandra-salamandra", "hibiscus-syriacus"},
      {"eublepharis-macularius", "adiantum-raddianum"},
      {"eublepharis-macularius", "epipremnum-aureum"},
      {"eublepharis-macularius", "phlebodium-aureum"},
      {"dendrobates-tinctorius", "echeveria"},
      {"dendrobates-tinctorius", "taraxacum-officinale"},
      {"dendrobates-tinctorius", "tillandsia-xerographica"},
      {"dendrobates-tinctorius", "asplenium-scolopendrium"},
      {"pantherophis-guttatus", "juncus-effusus"},
      {"pantherophis-guttatus", "euphorbia-tirucalli"},
      {"eublepharis-macularius", "adenium-obesum"}};
  for (const auto& [animal, plant] : strangers) {
    INFO(animal << " and " << plant);
    CHECK(suits(animal, plant) != Suits::yes);
  }
}
