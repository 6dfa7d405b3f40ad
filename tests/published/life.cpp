#include "life.h"

#include <algorithm>
#include <catch2/catch.hpp>

#include "base/text.h"
#include "catalogue/living.h"
#include "plan/light/constants.h"
#include "world/world.h"

namespace loamsheet::tests {

const Catalogue& catalogue() {
  static const Catalogue read = [] {
    const auto world = real_world();
    return read_catalogue(*world).value.value();
  }();
  return read;
}

namespace {

// "toxic" where our flags say that it harms who eats it. Sap and spines, which harm who touches it,
// are not what such lists are about.
std::string eaten(const Inputs& in) {
  const auto plant = read_plant(catalogue(), in.at("plant"));
  REQUIRE(plant.value);
  const auto poisons = [](const Hazard& h) {
    return h.kind == "toxic-if-eaten" || h.kind == "calcium-oxalate" || h.kind == "saponin";
  };
  const auto& hazards = plant.value->hazards;
  return std::any_of(hazards.begin(), hazards.end(), poisons) ? "toxic" : "non-toxic";
}

std::string oxalate(const Inputs& in) {
  const auto plant = read_plant(catalogue(), in.at("plant"));
  REQUIRE(plant.value);
  const auto& hazards = plant.value->hazards;
  const bool any = std::any_of(hazards.begin(), hazards.end(),
                               [](const Hazard& h) { return h.kind == "calcium-oxalate"; });
  return any ? "yes" : "no";
}

std::string highest_uv_index(const Inputs& in) {
  return significant(constants::zone_highest[std::stoi(in.at("zone")) - 1], 6);
}

std::string uv_zone(const Inputs& in) {
  const auto animal = read_animal(catalogue(), in.at("animal"));
  REQUIRE(animal.value);
  REQUIRE(animal.value->uv_zone);
  return significant(animal.value->uv_zone->value.low, 3);
}

}  // namespace

const std::map<std::string, Quantity>& life_quantities() {
  static const std::map<std::string, Quantity> all{{"eaten", eaten},
                                                   {"calcium_oxalate", oxalate},
                                                   {"uv_zone_highest", highest_uv_index},
                                                   {"uv_zone", uv_zone}};
  return all;
}

}  // namespace loamsheet::tests
