#include "plan/fit.h"

#include <algorithm>
#include <catch2/catch.hpp>
#include <optional>

#include "living.h"

using namespace loamsheet;
using namespace loamsheet::tests;

namespace {

std::optional<Weight> weight_of(const Found& found, const std::string& rule) {
  for (const Finding& f : found) {
    if (f.rule == rule) return f.weight;
  }
  return std::nullopt;
}

Build hazardous(const std::string& diet, const std::string& hazard, const std::string& origin) {
  Build build = box_build();
  build.kept.push_back(animal("skink", diet));
  Plant risky = plant("risky", "upright");
  risky.hazards.push_back({hazard, {origin}});
  add(build, risky);
  return build;
}

Build sturdy(int robustness, int wear, bool digs, const std::string& origin) {
  Build build = box_build();
  build.kept.push_back(animal("skink", "insectivore"));
  build.kept[0].facts.wear = known(wear);
  build.kept[0].facts.digs = known(digs);
  Plant leafy = plant("leafy", "upright");
  leafy.robustness = known(robustness, origin);
  add(build, leafy);
  return build;
}

}  // namespace

TEST_CASE("poison weighs by what the animal eats") {
  const auto stop = plant_fit(hazardous("herbivore", "calcium-oxalate", "common practice"));
  CHECK(weight_of(stop, "plant-poisons-browser") == Weight::stop);
  const auto caution = plant_fit(hazardous("omnivore", "saponin", "common practice"));
  CHECK(weight_of(caution, "plant-harms-nibbler") == Weight::caution);
  const auto note = plant_fit(hazardous("insectivore", "toxic-if-eaten", "common practice"));
  CHECK(weight_of(note, "plant-harms-prey") == Weight::note);
  CHECK(plant_fit(hazardous("herbivore", "none-known", "common practice")).empty());
}

TEST_CASE("a poison known from memory alone stops nothing") {
  const auto found = plant_fit(hazardous("herbivore", "latex-sap", "from memory"));
  CHECK(weight_of(found, "plant-poisons-browser") == Weight::caution);
}

TEST_CASE("spines count for all, sap for skins that take it up") {
  Build build = hazardous("insectivore", "spines", "common practice");
  CHECK(weight_of(plant_fit(build), "plant-sharp") == Weight::caution);
  build = hazardous("insectivore", "latex-sap", "common practice");
  CHECK_FALSE(weight_of(plant_fit(build), "plant-irritates-skin"));
  build.kept[0].facts.group = known<std::string>("tree frog");
  CHECK(weight_of(plant_fit(build), "plant-irritates-skin") == Weight::caution);
}

TEST_CASE("sturdy plants for rough animals") {
  const std::string practice = "common practice", rule = "plant-too-delicate";
  CHECK_FALSE(weight_of(plant_fit(sturdy(3, 3, true, practice)), rule));
  CHECK(weight_of(plant_fit(sturdy(2, 3, true, practice)), rule) == Weight::caution);
  CHECK(weight_of(plant_fit(sturdy(1, 3, true, practice)), rule) == Weight::stop);
  CHECK(weight_of(plant_fit(sturdy(1, 3, false, practice)), rule) == Weight::caution);
  CHECK(weight_of(plant_fit(sturdy(1, 3, true, "from memory")), rule) == Weight::caution);
}

TEST_CASE("what is said of an entry is said once") {
  Build build = sturdy(2, 3, true, "common practice");
  const Plant leafy = build.plants[0].facts;
  build.plants.clear();
  add(build, leafy, 4);
  CHECK(plant_fit(build).size() == 1);
  add(build, leafy, 2);
  CHECK(plant_fit(build).size() == 2);
}

TEST_CASE("plants and crew of damp places are questioned in dry builds alone") {
  for (const BuildKind kind : {BuildKind::humid, BuildKind::arid, BuildKind::burrowing}) {
    const bool dry = kind != BuildKind::humid;
    Build build = box_build();
    build.kind = kind;
    Plant wet = plant("wet", "fern"), arid = plant("arid", "succulent");
    wet.moisture = known<std::string>("wet"), arid.moisture = known<std::string>("dry");
    arid.humidity = known(Fraction{0.2});
    add(build, wet);
    add(build, arid);
    CrewUse crew;
    crew.facts.group = known<std::string>("springtail");
    build.crew.push_back(crew);
    CHECK(weight_of(plant_fit(build), "plant-too-dry").has_value() == dry);
    CHECK(weight_of(plant_fit(build), "plant-too-wet").has_value() != dry);
    CHECK(weight_of(crew_fit(build), "crew-too-dry").has_value() == dry);
  }
}

TEST_CASE("heat is held against plants and crew") {
  Build build = box_build();
  build.kept.push_back(animal("skink", "insectivore"));
  build.kept[0].facts.day = known(Range<Celsius>{{26}, {30}});
  build.kept[0].facts.night = known(Range<Celsius>{{12}, {14}});
  Plant cool = plant("cool", "fern"), tender = plant("tender", "fern");
  cool.warmest = known(Celsius{24}), tender.coldest = known(Celsius{16});
  add(build, cool);
  add(build, tender);
  CrewUse hot, cold;
  hot.facts.warmest = known(Celsius{25}), cold.facts.coldest = known(Celsius{31});
  build.crew = {hot, cold};
  CHECK(weight_of(plant_fit(build), "plant-too-hot") == Weight::caution);
  CHECK(weight_of(plant_fit(build), "plant-too-cold") == Weight::caution);
  CHECK(weight_of(crew_fit(build), "crew-too-hot") == Weight::caution);
  CHECK(weight_of(crew_fit(build), "crew-too-cold") == Weight::caution);
}

TEST_CASE("an enclosure is held against what a grown animal needs") {
  Build build = box_build();
  build.kept.push_back(animal("skink", "insectivore"));
  Animal& facts = build.kept[0].facts;
  facts.floor_length = known(Range<Millimetres>{900_mm, 900_mm});
  facts.floor_width = known(Range<Millimetres>{450_mm, 450_mm});
  facts.headroom = known(Range<Millimetres>{600_mm, 600_mm});
  CHECK(animal_fit(build).empty());
  facts.floor_length->value.low = 901_mm;
  facts.floor_width->value.low = 451_mm;
  facts.headroom->value.low = 601_mm;
  const Found found = animal_fit(build);
  CHECK(weight_of(found, "enclosure-too-short") == Weight::caution);
  CHECK(weight_of(found, "enclosure-too-narrow") == Weight::caution);
  CHECK(weight_of(found, "enclosure-too-low") == Weight::caution);
}

TEST_CASE("two species in one enclosure are questioned, one twice is not") {
  Build build = box_build();
  build.kept = {animal("a", "insectivore"), animal("a", "insectivore")};
  CHECK(animal_fit(build).empty());
  build.kept.push_back(animal("b", "insectivore"));
  CHECK(weight_of(animal_fit(build), "species-mixed") == Weight::caution);
}
