// living: plants and animals made by hand for tests.
#pragma once
#include <string>

#include "builds.h"
#include "catalogue/catalogue.h"
#include "world/world.h"

namespace loamsheet::tests {

template <class T>
Known<T> known(T value, const std::string& origin = "common practice") {
  return Fact<T>{std::move(value), {origin}};
}

inline const Catalogue& real_catalogue() {
  static const auto catalogue = [] {
    auto world = real_world();
    return read_catalogue(*world).value.value();
  }();
  return catalogue;
}

// The box with the real weights of hazards.
inline Build weighed_box() {
  Build build = box_build();
  build.hazards = real_catalogue().hazards;
  build.sources = read_sources(real_catalogue());
  return build;
}

inline Plant plant(const std::string& id, const std::string& habit) {
  Plant plant;
  plant.id = plant.name = id;
  plant.habit = known(habit);
  plant.height = known(Range<Millimetres>{100_mm, 150_mm});
  plant.spread = known(Range<Millimetres>{100_mm, 100_mm});
  plant.root_depth = known(Range<Millimetres>{40_mm, 40_mm});
  plant.humidity = known(Fraction{0.6});
  plant.robustness = known(3);
  plant.mountable = known(false);
  return plant;
}

inline void add(Build& build, const Plant& facts, int count = 1) {
  PlantUse use;
  use.facts = facts;
  use.ppfd = {50, 200};
  use.where = place(60 + static_cast<int>(build.plants.size()), 5);
  for (; count > 0; --count) {
    use.number = static_cast<int>(build.plants.size()) + 1;
    build.plants.push_back(use);
  }
}

inline KeptAnimal animal(const std::string& id, const std::string& diet) {
  KeptAnimal kept;
  kept.facts.id = kept.facts.name = id;
  kept.facts.diet = known(diet);
  kept.facts.group = known<std::string>("skink");
  kept.facts.wear = known(3);
  const std::string browses = diet == "herbivore"  ? "yes"
                              : diet == "omnivore" ? "incidentally"
                                                   : "no";
  kept.facts.browses = known(browses);
  kept.where = place(50, 5);
  return kept;
}

inline Furnishing branch(const std::string& id, Position from, Position to) {
  Furnishing thing;
  thing.id = id, thing.kind = "branch";
  thing.from = from, thing.to = to;
  thing.diameter = 40_mm;
  return thing;
}

inline Furnishing ledge(const std::string& id, Position at, Litres pocket) {
  Furnishing thing;
  thing.id = id, thing.kind = "ledge";
  thing.at = at;
  thing.width = 250_mm, thing.depth = 100_mm;
  thing.pocket = pocket;
  return thing;
}

inline Furnishing bowl(Position at) {
  Furnishing thing;
  thing.id = "bowl", thing.kind = "water-bowl";
  thing.at = at;
  thing.diameter = 120_mm;
  thing.where = place(41, 5);
  return thing;
}

}  // namespace loamsheet::tests
