#include "plan/choose/choose.h"

#include <algorithm>
#include <catch2/catch.hpp>
#include <cmath>
#include <set>

#include "living.h"
#include "plan/care/care.h"
#include "plan/fit/fit.h"
#include "plan/plan.h"

using namespace loamsheet;
using namespace loamsheet::tests;

namespace {

PlantKind kind(const std::string& id, const std::string& habit) {
  return {plant(id, habit), {50, 200}};
}

Build lit_build() {
  Build build = box_build();
  build.choosing = choosing_in(*real_catalogue().choosing).value.value();
  Lamp lamp;
  lamp.kind = "bar";
  lamp.length = 800_mm, lamp.flux = 6000, lamp.photons_per_lux = 0.015, lamp.hours = 12;
  lamp.at = {450, 225, 650};
  build.lamps.push_back(lamp);
  build.kept.push_back(animal("skink", "insectivore"));
  return build;
}

Build choosing(int count) {
  Build build = lit_build();
  build.offered = {kind("broad-rosette", "rosette"), kind("creeping-green", "ground-cover"),
                   kind("low-fern", "fern"), kind("second-fern", "fern"),
                   kind("wall-climber", "climber")};
  build.to_choose.push_back({count, std::nullopt, 0, place(61, 5)});
  return build;
}

StockedPack pot(const std::string& id, double price, int on_hand) {
  StockedPack pack;
  pack.item = id, pack.unit = "piece";
  pack.size = 1, pack.on_hand = on_hand;
  pack.price = Money{std::lround(price * 10000)};
  return pack;
}

std::set<std::string> species_of(const Build& build) {
  std::set<std::string> species;
  for (const PlantUse& use : build.plants) species.insert(use.facts.id);
  return species;
}

std::string passed_for(const Selection& selection, const std::string& species) {
  for (const PassedOver& plant : selection.passed_over) {
    if (plant.species == species) return plant.because.name;
  }
  return "";
}

}  // namespace

TEST_CASE("as many plants are picked as were asked for, one of each role first") {
  Build build = choosing(4);
  const auto selections = choose_plants(build);
  REQUIRE(selections.size() == 1);
  CHECK(selections[0].picked.size() == 4);
  CHECK(build.plants.size() == 4);
  CHECK(build.to_choose.empty());
  std::set<std::string> roles;
  for (const PickedPlant& plant : selections[0].picked) roles.insert(plant.role);
  CHECK(roles == std::set<std::string>{"backdrop", "focal", "ground", "middle"});
  const std::string first = passed_for(selections[0], "low-fern");
  const std::string second = passed_for(selections[0], "second-fern");
  CHECK((first == "beaten") != (second == "beaten"));
}

TEST_CASE("of plants that fit alike, those of two kinds of leaf are picked") {
  Build build = choosing(2);
  build.offered = {kind("a-fern", "fern"), kind("b-fern", "fern"), kind("c-grass", "grass")};
  for (PlantKind& plant : build.offered) plant.facts.leaf = known<std::string>("divided");
  build.offered[2].facts.leaf = known<std::string>("strap");
  choose_plants(build);
  CHECK(species_of(build).size() == 2);
  CHECK(species_of(build).contains("c-grass"));
}

TEST_CASE("of plants that fit alike, the one from the animals' climate is picked") {
  Build build = choosing(1);
  build.offered = {kind("a-hardy", "fern"), kind("b-tropical", "fern")};
  build.offered[0].facts.coldest = known(Celsius{-15});
  build.offered[1].facts.coldest = known(Celsius{15});
  build.kept[0].facts.night = known(Range<Celsius>{{20}, {23}});
  choose_plants(build);
  CHECK(species_of(build) == std::set<std::string>{"b-tropical"});
}

TEST_CASE("a plant plays the role that the catalogue gives it before that of its habit") {
  Build build = choosing(1);
  build.offered = {kind("show-fern", "fern")};
  build.offered[0].facts.role = known<std::string>("focal");
  const auto selections = choose_plants(build);
  REQUIRE(selections[0].picked.size() == 1);
  CHECK(selections[0].picked[0].role == "focal");
}

TEST_CASE("picked plants take their numbers where the spec asks for them") {
  Build build = choosing(2);
  add(build, plant("named-first", "fern"));
  add(build, plant("named-last", "fern"));
  build.to_choose[0].after = 1;
  choose_plants(build);
  REQUIRE(build.plants.size() == 4);
  CHECK(build.plants[0].facts.id == "named-first");
  CHECK(build.plants[3].facts.id == "named-last");
  for (size_t i = 0; i < 4; ++i) CHECK(build.plants[i].number == static_cast<int>(i) + 1);
  CHECK(build.plants[1].chosen);
  CHECK_FALSE(build.plants[3].chosen);
}

TEST_CASE("a plant with a stop is never picked, not even to make up the number") {
  Build build = choosing(5);
  Animal& climber = build.kept[0].facts;
  climber.mass = known(Range<Kilograms>{{0.3}, {0.4}});
  climber.claws = climber.climbs = known(true);
  climber.lifestyle = known<std::string>("arboreal");
  climber.wear = known(5);
  build.offered[0].facts.robustness = known(1);
  const auto selections = choose_plants(build);
  CHECK_FALSE(species_of(build).contains("broad-rosette"));
  CHECK(passed_for(selections[0], "broad-rosette") == "stop");
}

TEST_CASE("neither budget nor shelf is exceeded, and the price is exact") {
  Build build = choosing(4);
  build.to_choose[0].budget = Money{93000};
  build.stock = std::vector<StockedPack>{pot("broad-rosette", 6.20, 2), pot("low-fern", 3.10, 1),
                                         pot("creeping-green", 3.10, 1)};
  const auto selections = choose_plants(build);
  CHECK(selections[0].picked.size() == 2);
  REQUIRE(selections[0].cost);
  CHECK(*selections[0].cost == Money{93000});
  CHECK(passed_for(selections[0], "wall-climber") == "not-in-stock");
}

TEST_CASE("a picked plant's price is rounded as its line of the quote is") {
  for (const int digits : {2, 0}) {
    Build build = choosing(1);
    build.offered = {kind("low-fern", "fern")};
    build.stock = std::vector<StockedPack>{pot("low-fern", 3.125, 1)};
    build.quote = QuoteTerms{.currency = "EUR", .digits = digits};
    const Money price{digits == 2 ? 31300 : 30000};
    build.to_choose[0].budget = price;
    const auto selections = choose_plants(build);
    REQUIRE(selections[0].picked.size() == 1);
    CHECK(selections[0].picked[0].price == price);
    CHECK(selections[0].cost == price);
  }
}

TEST_CASE("the order of what is on offer changes nothing") {
  Build one = choosing(3), other = choosing(3);
  std::reverse(other.offered.begin(), other.offered.end());
  choose_plants(one), choose_plants(other);
  for (size_t i = 0; i < 3; ++i) CHECK(one.plants[i].facts.id == other.plants[i].facts.id);
}

TEST_CASE("a replacement stands where the dead plant stood, and the others stay") {
  Build build = lit_build();
  add(build, plant("fern", "fern"), 3);
  const Plan before = make_plan(build);
  build.replaced.push_back(
      {2, kind("other-fern", "fern"), plus_days(build.identity.plant_on, 18), place(80, 5)});
  build.identity.done_until = build.replaced[0].on;
  put_replacements(build);
  const Plan after = make_plan(build);
  for (size_t i = 0; i < 3; ++i) {
    CHECK(after.planting->plants[i].at.x == before.planting->plants[i].at.x);
    CHECK(after.planting->plants[i].at.y == before.planting->plants[i].at.y);
  }
  CHECK(after.planting->plants[1].species == "other-fern");
  CHECK(after.planting->plants[1].why[0].name == "replaced");
  CHECK(after.ready.days == 18 + 30);
  CHECK(after.ready.because[0] == "after-replanting");
}

TEST_CASE(
    "after a replacement a slip moves the readiness by as many days, with a move or without") {
  for (const bool moved : {false, true}) {
    Build build = lit_build();
    add(build, plant("fern", "fern"), 2);
    build.identity.moved = moved;
    if (moved) build.identity.moves_on = plus_days(build.identity.plant_on, 40);
    build.identity.done_until = plus_days(build.identity.plant_on, 10);
    const int days = make_plan(build).ready.days;
    build.identity.slip = 5;
    if (moved) build.identity.moves_on = plus_days(*build.identity.moves_on, 5);
    CHECK(make_plan(build).ready.days == days + 5);
  }
}

TEST_CASE("a caution can be taken on, a stop cannot") {
  Build build = lit_build();
  build.identity.moved = true;
  build.identity.moves_on = plus_days(build.identity.plant_on, 3);
  build.layers.substrate.front = 400_mm;
  build.accepted = {{"moved-before-rooted", "bench 2", "a brick wall", place(90, 5)},
                    {"layers-above-sill", "bench 2", "none", place(91, 5)}};
  const Plan plan = make_plan(build);
  std::set<std::string> rules;
  for (const Finding& finding : plan.findings) {
    rules.insert(finding.rule);
    CHECK(finding.taken_on.has_value() == (finding.rule == "moved-before-rooted"));
  }
  CHECK(rules.contains("moved-before-rooted"));
  CHECK(rules.contains("stop-not-accepted"));
  CHECK(plan.status == Status::not_cleared);
}

TEST_CASE("a plant that fails has three safe stand-ins of its habit first, then those in stock") {
  Build build = lit_build();
  Plant failing = plant("tender-fern", "fern");
  failing.robustness = known(1);
  add(build, failing);
  build.offered = {kind("a-moss", "moss"),
                   kind("a-fern", "fern"),
                   kind("b-fern", "fern"),
                   kind("c-climber", "climber"),
                   {failing, {50, 200}}};
  build.stock = std::vector<StockedPack>{pot("a-moss", 2, 1), pot("b-fern", 2, 1)};
  Plan plan = make_plan(build);
  REQUIRE(wants_stand_ins(plan.findings));
  CHECK(habits_that_fail(build, plan.findings) == std::set<std::string>{"fern"});
  CHECK(add_stand_ins(build, plan.findings));
  const auto failed = std::find_if(plan.findings.begin(), plan.findings.end(),
                                   [](const Finding& f) { return f.rule == "plant-too-delicate"; });
  REQUIRE(failed != plan.findings.end());
  REQUIRE(failed->stand_ins.size() == 3);
  CHECK(failed->stand_ins[0].species == "b-fern");
  CHECK(failed->stand_ins[0].in_stock);
  CHECK(failed->stand_ins[1].species == "a-fern");
  CHECK(failed->stand_ins[2].species == "a-moss");
  build.offered.resize(2);
  CHECK_FALSE(add_stand_ins(build, plan.findings));
}
