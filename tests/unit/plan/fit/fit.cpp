#include "plan/fit/fit.h"

#include <algorithm>
#include <catch2/catch.hpp>
#include <optional>

#include "living.h"
#include "plan/fit/body.h"

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
  Build build = weighed_box();
  build.kept.push_back(animal("skink", diet));
  Plant risky = plant("risky", "upright");
  risky.hazards.push_back({hazard, {origin}});
  add(build, risky);
  return build;
}

Build sturdy(int robustness, int wear, bool digs, const std::string& origin) {
  Build build = weighed_box();
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
  const auto caution = plant_fit(hazardous("omnivore", "toxic-if-eaten", "common practice"));
  CHECK(weight_of(caution, "plant-harms-nibbler") == Weight::caution);
  const auto licked = plant_fit(hazardous("omnivore", "saponin", "common practice"));
  CHECK(weight_of(licked, "plant-harms-nibbler") == Weight::note);
  const auto note = plant_fit(hazardous("insectivore", "toxic-if-eaten", "common practice"));
  CHECK(weight_of(note, "plant-harms-prey") == Weight::note);
  const Build harmless = hazardous("herbivore", "none-known", "common practice");
  CHECK(suitability(harmless, harmless.plants[0]).reasons.empty());
}

TEST_CASE("a poison, or an appetite, known from memory alone stops nothing") {
  Build build = hazardous("herbivore", "calcium-oxalate", "from memory");
  CHECK(weight_of(plant_fit(build), "plant-poisons-browser") == Weight::caution);
  build = hazardous("herbivore", "calcium-oxalate", "common practice");
  build.kept[0].facts.browses->origin = {"from memory"};
  CHECK(weight_of(plant_fit(build), "plant-poisons-browser") == Weight::caution);
}

TEST_CASE("the known cause weighs in place of what poison lists say, with their source") {
  Build build = hazardous("omnivore", "toxic-if-eaten", "aspca-cats");
  CHECK(weight_of(plant_fit(build), "plant-harms-nibbler") == Weight::caution);
  build.plants[0].facts.hazards.push_back({"calcium-oxalate", {"from memory"}});
  CHECK(weight_of(plant_fit(build), "plant-harms-nibbler") == Weight::note);
  build.kept[0].facts.browses = known<std::string>("yes");
  CHECK(weight_of(plant_fit(build), "plant-poisons-browser") == Weight::stop);
  build.plants[0].facts.hazards[0].origin = {"from memory"};
  CHECK(weight_of(plant_fit(build), "plant-poisons-browser") == Weight::caution);
}

TEST_CASE("spines weigh by what lands on them, sap by the skin that takes it up") {
  Build build = hazardous("insectivore", "spines", "common practice");
  CHECK(weight_of(plant_fit(build), "plant-sharp") == Weight::caution);
  build.kept[0].facts.wear = known(1);
  CHECK(weight_of(plant_fit(build), "plant-sharp") == Weight::note);
  build = hazardous("insectivore", "caustic-latex", "common practice");
  CHECK_FALSE(weight_of(plant_fit(build), "plant-irritates-skin"));
  build.kept[0].facts.body.skin_takes_up = known(true);
  CHECK(weight_of(plant_fit(build), "plant-irritates-skin") == Weight::stop);
}

TEST_CASE("sap that burns is a caution for what breaks stems, and has its own rule on bare skin") {
  Build build = hazardous("insectivore", "caustic-latex", "common practice");
  build.kept[0].facts.wear = known(2);
  CHECK(weight_of(plant_fit(build), "plant-sap-burns") == Weight::caution);
  build.kept[0].facts.wear = known(1);
  CHECK_FALSE(weight_of(plant_fit(build), "plant-sap-burns"));
  build.kept[0].facts.wear = known(2);
  build.kept[0].facts.body.skin_takes_up = known(true);
  CHECK_FALSE(weight_of(plant_fit(build), "plant-sap-burns"));
}

TEST_CASE("what keepers are known to grow with a browser is a caution where it would be a stop") {
  Build build = hazardous("herbivore", "calcium-oxalate", "aspca-oxalates");
  build.kept[0].facts.planted_with = known(std::vector<std::string>{"other"}, "herp-hut");
  CHECK(weight_of(plant_fit(build), "plant-poisons-browser") == Weight::stop);
  build.kept[0].facts.planted_with->value.push_back("risky");
  const Found found = plant_fit(build);
  CHECK_FALSE(weight_of(found, "plant-poisons-browser"));
  CHECK(weight_of(found, "plant-kept-with-browser") == Weight::caution);
}

TEST_CASE("a finding on a plant names the plant's source beside that of the rule") {
  const Build build = hazardous("herbivore", "calcium-oxalate", "aspca-oxalates");
  const Found found = suitability(build, build.plants[0]).reasons;
  REQUIRE(found.size() == 1);
  for (const auto& [slot, value] : found[0].args) {
    if (slot != "source") continue;
    CHECK(std::get<std::string>(value) == build.sources.at("cttc-poison-plants").title + "; " +
                                              build.sources.at("aspca-oxalates").title +
                                              "; common practice");
  }
}

TEST_CASE("no weight of a hazard that is from memory alone is a stop") {
  for (const auto& [kind, rule] : real_catalogue().hazards) {
    INFO(kind);
    bool stops = rule.touch == Gravity::stop || rule.light == Gravity::stop;
    stops = stops || rule.skin == Gravity::stop;
    for (const auto& [browses, gravity] : rule.eaten) stops = stops || gravity == Gravity::stop;
    CHECK_FALSE((stops && rule.origin.from_memory()));
    CHECK_FALSE(rule.origin.name.empty());
  }
}

TEST_CASE("a plant too delicate is a caution, under the claws of a heavy climber a stop") {
  const std::string practice = "common practice", rule = "plant-too-delicate";
  CHECK_FALSE(weight_of(plant_fit(sturdy(3, 3, true, practice)), rule));
  CHECK(weight_of(plant_fit(sturdy(1, 3, true, practice)), rule) == Weight::caution);
  Build clawed = sturdy(1, 3, false, practice);
  clawed.kept[0].facts.claws = known(true);
  clawed.kept[0].mass = Kilograms{0.049};
  CHECK(weight_of(plant_fit(clawed), rule) == Weight::caution);
  clawed.kept[0].mass = Kilograms{0.051};
  CHECK(weight_of(plant_fit(clawed), rule) == Weight::stop);
  clawed.plants[0].facts.robustness = known(2);
  CHECK(weight_of(plant_fit(clawed), rule) == Weight::caution);
  clawed.plants[0].facts.robustness = known(1, "from memory");
  CHECK(weight_of(plant_fit(clawed), rule) == Weight::caution);
}

TEST_CASE("out of reach is further than a body's length from where the animal gets to") {
  Build build = sturdy(1, 3, false, "common practice");
  KeptAnimal& dragon = build.kept[0];
  dragon.facts.length = known(Range<Millimetres>{150_mm, 200_mm});
  build.furnishings = {ledge("shelf", {450, 200, 400}, 1_L)};
  CHECK_FALSE(out_of_reach(build, build.plants[0], dragon));
  build.plants[0].on = "shelf";
  CHECK(out_of_reach(build, build.plants[0], dragon));
  CHECK_FALSE(weight_of(plant_fit(build), "plant-too-delicate"));
  build.furnishings.push_back(branch("perch", {300, 200, 200}, {400, 200, 300}));
  CHECK(out_of_reach(build, build.plants[0], dragon));
  dragon.facts.claws = known(true);
  CHECK_FALSE(out_of_reach(build, build.plants[0], dragon));
  build.furnishings[0].at.z = 200;
  dragon.facts.claws.reset();
  CHECK_FALSE(out_of_reach(build, build.plants[0], dragon));
  build.furnishings[0].at.z = 400;
  dragon.facts.lifestyle = known<std::string>("arboreal");
  CHECK_FALSE(out_of_reach(build, build.plants[0], dragon));
}

TEST_CASE("poison out of a browser's reach is worth a note") {
  Build build = hazardous("herbivore", "calcium-oxalate", "common practice");
  build.kept[0].facts.length = known(Range<Millimetres>{150_mm, 200_mm});
  build.furnishings = {ledge("shelf", {450, 200, 450}, 1_L)};
  build.plants[0].on = "shelf";
  CHECK(weight_of(plant_fit(build), "plant-harms-prey") == Weight::note);
  CHECK_FALSE(weight_of(plant_fit(build), "plant-poisons-browser"));
}

TEST_CASE("food plants are grazed rather than too delicate") {
  Build build = sturdy(1, 5, true, "common practice");
  build.plants[0].facts.edible = known(true);
  CHECK(weight_of(plant_fit(build), "plant-too-delicate") == Weight::caution);
  build.kept[0].facts.browses = known<std::string>("yes");
  CHECK(weight_of(plant_fit(build), "plant-grazed") == Weight::note);
  CHECK_FALSE(weight_of(plant_fit(build), "plant-too-delicate"));
}

TEST_CASE("a plant of dry places rots in the air of a damp temperate build, too") {
  Build build = weighed_box();
  build.kind = BuildKind::temperate;
  build.kept.push_back(animal("salamander", "insectivore"));
  build.kept[0].facts.humidity = known(Range<Fraction>{{0.75}, {1}});
  Plant arid = plant("arid", "succulent");
  arid.moisture = known<std::string>("dry"), arid.humidity = known(Fraction{0.2});
  add(build, arid);
  CHECK(weight_of(plant_fit(build), "plant-too-wet") == Weight::caution);
  build.kept[0].facts.humidity->value.low = {0.4};
  CHECK_FALSE(weight_of(plant_fit(build), "plant-too-wet"));
}

TEST_CASE("a young animal's plants are outgrown before they are broken") {
  Build build = sturdy(1, 4, false, "common practice");
  KeptAnimal& gecko = build.kept[0];
  gecko.facts.claws = known(true);
  gecko.facts.mass = known(Range<Kilograms>{{0.2}, {0.3}});
  gecko.mass = Kilograms{0.004};
  CHECK(weight_of(plant_fit(build), "plant-too-delicate") == Weight::stop);
  gecko.juvenile = true;
  CHECK(wear_now(gecko) == 2);
  CHECK(weight_of(plant_fit(build), "plant-too-delicate") == Weight::stop);
  build.plants[0].facts.robustness = known(2);
  CHECK(weight_of(plant_fit(build), "plant-outgrown") == Weight::caution);
}

TEST_CASE("wear that the catalogue does not state follows from mass, roughness and number") {
  KeptAnimal frog = animal("frog", "insectivore");
  frog.facts.wear.reset();
  CHECK_FALSE(wear_grown(frog));
  frog.facts.mass = known(Range<Kilograms>{{0.003}, {0.005}});
  CHECK(wear_grown(frog)->value == 1);
  frog.count = 9;
  CHECK(wear_grown(frog)->value == 1);
  frog.facts.jumps = known(true);
  CHECK(wear_grown(frog)->value == 3);
  frog.count = 3;
  CHECK(wear_grown(frog)->value == 2);
}

TEST_CASE("a young animal is as long as the cube root of its mass says") {
  KeptAnimal gecko = animal("gecko", "insectivore");
  CHECK_FALSE(smallest_length(gecko));
  gecko.facts.length = known(Range<Millimetres>{180_mm, 240_mm});
  CHECK(smallest_length(gecko)->v == Approx(180));
  gecko.juvenile = true;
  CHECK(smallest_length(gecko)->v == Approx(60));
  gecko.facts.mass = known(Range<Kilograms>{{0.05}, {0.08}});
  gecko.mass = Kilograms{0.01};
  CHECK(smallest_length(gecko)->v == Approx(120));
}

TEST_CASE("the air that an animal is kept in is held against the plant") {
  Build build = weighed_box();
  build.kept.push_back(animal("snake", "carnivore"));
  build.kept[0].facts.humidity = known(Range<Fraction>{{0.4}, {0.59}});
  add(build, plant("fern", "fern"));
  CHECK(weight_of(plant_fit(build), "plant-air-too-dry") == Weight::caution);
  build.kept[0].facts.humidity->value.high = {0.6};
  CHECK_FALSE(weight_of(plant_fit(build), "plant-air-too-dry"));
}

TEST_CASE("in a dry build it is the air of the open that counts, not that of a damp hide") {
  Build build = weighed_box();
  build.kind = BuildKind::arid;
  build.kept.push_back(animal("gecko", "insectivore"));
  build.kept[0].facts.humidity = known(Range<Fraction>{{0.3}, {0.5}});
  Plant vine = plant("vine", "climber");
  vine.humidity = known(Fraction{0.5});
  add(build, vine);
  CHECK(weight_of(plant_fit(build), "plant-air-too-dry") == Weight::caution);
  build.plants[0].facts.humidity = known(Fraction{0.4});
  CHECK_FALSE(weight_of(plant_fit(build), "plant-air-too-dry"));
  build.plants[0].facts.moisture = known<std::string>("moist");
  CHECK(weight_of(plant_fit(build), "plant-too-dry") == Weight::caution);
}

TEST_CASE("a plant of open places is questioned in air that is damp for long") {
  Build build = weighed_box();
  build.kept.push_back(animal("frog", "insectivore"));
  build.kept[0].facts.humidity = known(Range<Fraction>{{0.8}, {1}});
  Plant open = plant("open", "rosette");
  open.dampest = known(Fraction{0.9});
  add(build, open);
  CHECK_FALSE(weight_of(plant_fit(build), "plant-air-too-damp"));
  build.plants[0].facts.dampest->value = {0.6};
  CHECK(weight_of(plant_fit(build), "plant-air-too-damp") == Weight::caution);
}

TEST_CASE("bog plants are questioned where the ground dries out between waterings") {
  Build build = weighed_box();
  build.kind = BuildKind::temperate;
  build.kept.push_back(animal("snake", "carnivore"));
  build.kept[0].facts.humidity = known(Range<Fraction>{{0.4}, {0.6}});
  Plant bog = plant("bog", "grass");
  bog.moisture = known<std::string>("wet");
  add(build, bog);
  CHECK(weight_of(plant_fit(build), "plant-too-dry") == Weight::caution);
  build.kept[0].facts.humidity->value = {{0.6}, {0.8}};
  CHECK_FALSE(weight_of(plant_fit(build), "plant-too-dry"));
}

TEST_CASE("without a basking place there is no cool side, and no side is warm at night") {
  Build build = weighed_box();
  build.kept.push_back(animal("frog", "insectivore"));
  Animal& frog = build.kept[0].facts;
  frog.day = known(Range<Celsius>{{22}, {30}}), frog.night = known(Range<Celsius>{{10}, {20}});
  Plant fern = plant("fern", "fern");
  fern.warmest = known(Celsius{24});
  add(build, fern);
  CHECK(weight_of(plant_fit(build), "plant-too-hot") == Weight::caution);
  frog.basking = known(Range<Celsius>{{35}, {38}});
  CHECK_FALSE(weight_of(plant_fit(build), "plant-too-hot"));
  build.plants[0].facts.coldest = known(Celsius{12});
  CHECK(weight_of(plant_fit(build), "plant-too-cold") == Weight::caution);
  build.plants[0].facts.coldest = known(Celsius{10});
  CHECK_FALSE(weight_of(plant_fit(build), "plant-too-cold"));
}

TEST_CASE("bought plants are looked at with the animal in mind that eats them") {
  Build build = weighed_box();
  build.kept = {animal("frog", "insectivore"), animal("tortoise", "herbivore")};
  add(build, plant("one", "fern"));
  add(build, plant("two", "fern"));
  const Found found = plant_fit(build);
  CHECK(weight_of(found, "plant-residue") == Weight::caution);
  CHECK(std::count_if(found.begin(), found.end(),
                      [](const Finding& f) { return f.rule == "plant-residue"; }) == 1);
  build.kept.pop_back();
  CHECK(weight_of(plant_fit(build), "plant-residue") == Weight::note);
}

TEST_CASE("a plant that may go anywhere is judged as one of the build is") {
  const Build build = hazardous("herbivore", "calcium-oxalate", "common practice");
  const Suitability anywhere = suitability(build, build.plants[0].facts, place(1, 1));
  CHECK(anywhere.suits == Suits::no);
  REQUIRE(anywhere.reasons.size() == 1);
  CHECK(anywhere.reasons[0].where == place(1, 1));
  CHECK(suitability(build, plant("other", "fern"), place(1, 1)).suits == Suits::yes);
}

TEST_CASE("what is said of an entry is said once") {
  Build build = sturdy(2, 3, true, "common practice");
  const Plant leafy = build.plants[0].facts;
  build.plants.clear();
  add(build, leafy, 4);
  CHECK(plant_fit(build).size() == 2);
  add(build, leafy, 2);
  CHECK(plant_fit(build).size() == 3);
}

TEST_CASE("plants and crew of damp places are questioned in dry builds alone") {
  for (const BuildKind kind : {BuildKind::humid, BuildKind::arid, BuildKind::burrowing}) {
    const bool dry = kind != BuildKind::humid;
    Build build = weighed_box();
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
  Build build = weighed_box();
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
