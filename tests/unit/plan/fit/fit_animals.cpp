// Animals against their enclosure, each other, what stands in it, what leads out of it, and the
// crew.
#include <algorithm>
#include <catch2/catch.hpp>
#include <optional>

#include "plan/fit/fit.h"
#include "plan/plan.h"
#include "unfit.h"

using namespace loamsheet;
using namespace loamsheet::tests;

namespace {

std::optional<Weight> weight_of(const Found& found, const std::string& rule) {
  for (const Finding& f : found) {
    if (f.rule == rule) return f.weight;
  }
  return std::nullopt;
}

Found fit(const Build& build) {
  Found all = animal_fit(build);
  for (const auto rule : {furniture_fit, escape_fit, material_fit, crew_fit}) {
    append(all, rule(build));
  }
  return all;
}

}  // namespace

TEST_CASE("nothing is said of an animal that has what it needs") {
  CHECK(fit(gecko_box()).empty());
}

TEST_CASE("an enclosure is held against what a grown animal needs") {
  Build build = gecko_box();
  Animal& facts = build.kept[0].facts;
  facts.floor_length = millimetres(900, 900);
  facts.headroom = millimetres(600, 600);
  CHECK(animal_fit(build).empty());
  facts.floor_length->value.low = 901_mm;
  facts.floor_width->value.low = 451_mm;
  facts.headroom->value.low = 601_mm;
  const Found found = animal_fit(build);
  CHECK(weight_of(found, "enclosure-too-short") == Weight::caution);
  CHECK(weight_of(found, "enclosure-too-narrow") == Weight::caution);
  CHECK(weight_of(found, "enclosure-too-low") == Weight::caution);
}

TEST_CASE("less than half of the floor is a stop, for a young animal a caution") {
  Build build = gecko_box();
  KeptAnimal& kept = build.kept[0];
  kept.facts.floor_length = millimetres(1801, 1801);
  CHECK(weight_of(animal_fit(build), "enclosure-far-too-small") == Weight::stop);
  kept.juvenile = true;
  CHECK(weight_of(animal_fit(build), "enclosure-far-too-small") == Weight::caution);
  kept.juvenile = false;
  kept.facts.floor_length->origin = {"from memory"};
  CHECK(weight_of(animal_fit(build), "enclosure-far-too-small") == Weight::caution);
  kept.facts.floor_length->value.low = 1800_mm;
  CHECK_FALSE(weight_of(animal_fit(build), "enclosure-far-too-small"));
}

TEST_CASE("a law's minimum is named with its place and passes nothing by itself") {
  Build build = gecko_box();
  build.kept[0].facts.floor_length->origin = {"at-486-2004"};
  const Found met = animal_fit(build);
  REQUIRE(met.size() == 1);
  CHECK(met[0].rule == "legal-minimum");
  CHECK(met[0].weight == Weight::note);
  build.kept[0].facts.floor_length->value.low = 901_mm;
  CHECK(weight_of(animal_fit(build), "enclosure-too-short") == Weight::caution);
  CHECK(weight_of(animal_fit(build), "legal-minimum") == Weight::note);
}

TEST_CASE("each animal beyond two takes 15 % more floor") {
  Build build = gecko_box();  // 0.405 m2; two need 0.27, five 0.27 x 1.45 = 0.3915, six 0.432
  build.kept[0].count = 5;
  CHECK_FALSE(weight_of(animal_fit(build), "enclosure-too-small-for-number"));
  build.kept[0].count = 6;
  CHECK(weight_of(animal_fit(build), "enclosure-too-small-for-number") == Weight::caution);
  build.kept[0].count = 3;
  build.kept.push_back(build.kept[0]);
  CHECK(weight_of(animal_fit(build), "enclosure-too-small-for-number") == Weight::caution);
}

TEST_CASE("layers leave the air that the animal needs") {
  Build build = gecko_box();  // 0.27 m2 x 450 mm x 2/3 = 81 L; 0.405 m2 must keep 200 mm
  build.layers.drainage.depth = 50_mm;
  build.layers.litter->depth = 10_mm;
  build.layers.substrate.front = build.layers.substrate.back = 339_mm;
  CHECK_FALSE(weight_of(animal_fit(build), "air-space-too-small"));
  build.layers.substrate.back = 342_mm;
  CHECK(weight_of(animal_fit(build), "air-space-too-small") == Weight::caution);
}

TEST_CASE("who lives alone is not kept in company") {
  const auto of = [](const std::string& company, int count, const std::string& origin) {
    Build build = gecko_box();
    build.kept[0].facts.society = known(company, origin);
    build.kept[0].count = count;
    return animal_fit(build);
  };
  CHECK(weight_of(of("alone", 2, "common practice"), "lives-alone") == Weight::stop);
  CHECK(weight_of(of("alone", 2, "from memory"), "lives-alone") == Weight::caution);
  CHECK(of("alone", 1, "common practice").empty());
  CHECK(of("pair", 2, "common practice").empty());
  CHECK(weight_of(of("pair", 3, "common practice"), "lives-in-pairs") == Weight::caution);
  CHECK(of("group", 3, "common practice").empty());
}

TEST_CASE("two species share a tank only where the catalogue says so") {
  Build build = gecko_box();
  build.kept = {animal("a", "insectivore"), animal("a", "insectivore")};
  CHECK(animal_fit(build).empty());
  build.kept.push_back(animal("b", "insectivore"));
  CHECK(weight_of(animal_fit(build), "species-mixed") == Weight::stop);
  build.kept[2].facts.lives_with = known(std::vector<std::string>{"a"});
  CHECK(animal_fit(build).empty());
  build.kept.push_back(animal("c", "insectivore"));
  const Found found = animal_fit(build);
  CHECK(std::count_if(found.begin(), found.end(),
                      [](const Finding& f) { return f.rule == "species-mixed"; }) == 2);
}

TEST_CASE("ground animals hide, those that bask on both sides") {
  Build build = gecko_box();
  build.lamps = {heat_lamp(150)};
  CHECK(furniture_fit(build).empty());
  build.kept[0].facts.basking = known(Range<Celsius>{{32}, {34}});
  CHECK(weight_of(furniture_fit(build), "cool-hide-missing") == Weight::caution);
  build.lamps = {heat_lamp(800)};
  CHECK(weight_of(furniture_fit(build), "warm-hide-missing") == Weight::caution);
  build.furnishings.push_back(thing("tube", {800, 200}));
  CHECK(furniture_fit(build).empty());
  build.furnishings.clear();
  CHECK(weight_of(furniture_fit(build), "hide-missing") == Weight::caution);
  build.kept[0].facts.lifestyle = known<std::string>("arboreal");
  CHECK_FALSE(weight_of(furniture_fit(build), "hide-missing"));
}

TEST_CASE("an animal that basks finds a warm place to lie on") {
  Build build = gecko_box();
  build.kept[0].facts.lifestyle = known<std::string>("arboreal");
  build.kept[0].facts.basking = known(Range<Celsius>{{32}, {34}});
  CHECK(weight_of(furniture_fit(build), "basking-heat-missing") == Weight::caution);
  build.heaters.push_back({"mat", 40, true, place(51, 5)});
  CHECK(weight_of(furniture_fit(build), "basking-heat-missing") == Weight::caution);
  build.heaters.push_back({"panel", 40, true, place(51, 5)});
  CHECK(furniture_fit(build).empty());
  build.lamps = {heat_lamp(700)};
  CHECK(weight_of(furniture_fit(build), "basking-place-missing") == Weight::caution);
  build.furnishings.push_back(branch("perch", {300, 225, 300}, {560, 225, 400}));
  CHECK(furniture_fit(build).empty());
  build.furnishings.back().to.x = 540;
  CHECK(weight_of(furniture_fit(build), "basking-place-missing") == Weight::caution);
}

TEST_CASE("nobody drowns at the size it has now") {
  Build build = gecko_box();
  build.furnishings.push_back(bowl({700, 200, 0}));
  Furnishing& dish = build.furnishings.back();
  dish.depth = 90_mm;
  CHECK_FALSE(weight_of(furniture_fit(build), "bowl-too-deep"));
  CHECK(weight_of(furniture_fit(build), "feeders-drown") == Weight::note);
  build.kept[0].juvenile = true;
  build.kept[0].facts.young = millimetres(60, 70);
  CHECK(weight_of(furniture_fit(build), "bowl-too-deep") == Weight::caution);
  build.kept[0].facts.water = known<std::string>("swim");
  CHECK_FALSE(weight_of(furniture_fit(build), "bowl-too-deep"));
  build.kept[0].facts.water = known<std::string>("soak");
  CHECK(weight_of(furniture_fit(build), "bowl-too-deep") == Weight::caution);
  dish.depth = 60_mm;
  CHECK_FALSE(weight_of(furniture_fit(build), "bowl-too-deep"));
  build.furnishings.push_back(thing("stone", {700, 200}));
  CHECK(furniture_fit(build).empty());
}

TEST_CASE("something leads out of the water") {
  Build build = gecko_box();
  build.water_area = WaterArea{WaterArea::Side::right, {0.3}, 100_mm};
  CHECK(weight_of(furniture_fit(build), "way-out-missing") == Weight::caution);
  build.kept[0].facts.water = known<std::string>("swim");
  CHECK(weight_of(furniture_fit(build), "way-out-missing") == Weight::note);
  build.furnishings.push_back(branch("root", {500, 200, 100}, {629, 200, 20}));
  CHECK(weight_of(furniture_fit(build), "way-out-missing") == Weight::note);
  build.furnishings.back().to.x = 630;
  CHECK(furniture_fit(build).empty());
}

TEST_CASE("who digs to lay has a box or deep damp soil") {
  Build build = gecko_box();
  build.kept[0].facts.lays = known<std::string>("soil");
  CHECK(weight_of(furniture_fit(build), "laying-box-missing") == Weight::note);
  build.kept[0].count = 2;
  CHECK(weight_of(furniture_fit(build), "laying-box-missing") == Weight::caution);
  build.layers.substrate.back = 100_mm;
  CHECK(furniture_fit(build).empty());
  build.kind = BuildKind::arid;
  CHECK(weight_of(furniture_fit(build), "laying-box-missing") == Weight::caution);
  build.furnishings.push_back(thing("laying-box", {700, 200}));
  CHECK(furniture_fit(build).empty());
}

TEST_CASE("what digs is warmed from above") {
  Build build = gecko_box();
  build.heaters.push_back({"mat", 20, true, place(51, 5)});
  CHECK(furniture_fit(build).empty());
  build.kept[0].facts.digs = known(true);
  CHECK(weight_of(furniture_fit(build), "heat-under-digger") == Weight::caution);
  build.heaters[0].kind = "panel";
  CHECK(furniture_fit(build).empty());
}

TEST_CASE("what digs is not given a stone to bring down") {
  Build build = gecko_box();
  build.furnishings.push_back(thing("stone", {700, 200}));
  build.standing.push_back(block({700, 200}, {0.01}, 100_mm));
  build.standing.back().id = "stone";
  build.standing.back().on_base = false;
  build.standing.back().mass = 0.9_kg;
  CHECK(furniture_fit(build).empty());
  build.kept[0].facts.digs = known(true);
  CHECK(weight_of(furniture_fit(build), "stone-undermined") == Weight::caution);
  build.standing.back().mass = 1.1_kg;  // a stop of its own, which says it all
  CHECK(furniture_fit(build).empty());
  build.standing.back().mass.reset();
  CHECK(weight_of(furniture_fit(build), "stone-undermined") == Weight::caution);
  build.standing.back().on_base = true;
  CHECK(furniture_fit(build).empty());
}

TEST_CASE("gaps are held against the smallest animal") {
  Build build = gecko_box();  // 180 mm long: nothing under 9 mm lets it out
  build.enclosure.openings[0].gap = 8.9_mm;
  CHECK(escape_fit(build).empty());
  build.enclosure.openings[0].gap = 9_mm;
  CHECK(weight_of(escape_fit(build), "escape-gap") == Weight::caution);
  build.enclosure.openings[0].gap = 4_mm;
  build.kept[0].juvenile = true;
  build.kept[0].facts.young = millimetres(70, 80);
  CHECK(weight_of(escape_fit(build), "escape-gap") == Weight::caution);
  build.kept.clear();
  CHECK(escape_fit(build).empty());
}

TEST_CASE("an opening has mesh, and the mesh a measure") {
  Build build = gecko_box();
  Opening& vent = build.enclosure.openings[0];
  vent.kind = "vent";
  vent.gap.reset();
  CHECK(weight_of(escape_fit(build), "opening-without-mesh") == Weight::caution);
  vent.mesh = true;
  CHECK(weight_of(escape_fit(build), "mesh-not-measured") == Weight::note);
  vent.gap = 1_mm;
  CHECK(escape_fit(build).empty());
}

TEST_CASE("food insects are held back, too") {
  Build build = gecko_box();
  build.kept[0].facts.feeder = millimetres(2, 4);  // about 0.9 mm wide
  CHECK(weight_of(escape_fit(build), "feeders-escape") == Weight::note);
  build.enclosure.openings[0].gap = 0.8_mm;
  CHECK(escape_fit(build).empty());
}

TEST_CASE("metals weigh by the skin that takes them up") {
  Build build = gecko_box();
  build.hazardous = {hazardous_material("galvanised")};
  CHECK(weight_of(material_fit(build), "material-galvanised") == Weight::caution);
  build.kept[0].facts.body.skin_takes_up = known(true);
  CHECK(weight_of(material_fit(build), "material-galvanised") == Weight::stop);
  build.kept[0].facts.body.skin_takes_up = known(true, "from memory");
  CHECK(weight_of(material_fit(build), "material-galvanised") == Weight::caution);
  build.hazardous = {hazardous_material("stainless")};
  CHECK(weight_of(material_fit(build), "material-stainless") == Weight::note);
}

TEST_CASE("rough stone under the separator touches nobody") {
  Build build = gecko_box();
  build.kept[0].facts.body.skin_takes_up = known(true);
  build.hazardous = {hazardous_material("rough-stone")};
  CHECK(weight_of(material_fit(build), "material-rough-stone") == Weight::caution);
  build.hazardous[0].use = "drainage";
  CHECK(material_fit(build).empty());
  build.layers.separator.reset();
  CHECK(weight_of(material_fit(build), "material-rough-stone") == Weight::caution);
}

TEST_CASE("wood lice that bite are held against who is small, moults or lays") {
  Build build = gecko_box();
  build.crew = {wood_lice()};
  CHECK(crew_fit(build).empty());
  build.kept[0].facts.lays = known<std::string>("soil");
  CHECK(weight_of(crew_fit(build), "crew-eats-eggs") == Weight::note);
  build.kept[0].facts.body.moults_bare = known(true);
  CHECK(weight_of(crew_fit(build), "crew-bites") == Weight::caution);
  build.kept[0].facts.body.moults_bare.reset();
  build.kept[0].facts.length = millimetres(60, 80);
  CHECK(weight_of(crew_fit(build), "crew-bites") == Weight::caution);
}

TEST_CASE("a small hunter eats the crew out, a heavy one leaves it too much") {
  Build build = gecko_box();
  CHECK(crew_fit(build).empty());
  build.kept[0].facts.length = millimetres(60, 120);
  CHECK(weight_of(crew_fit(build), "crew-eaten-out") == Weight::note);
  build.kept[0].facts.length->value.high = 121_mm;
  build.kept[0].facts.mass = known(Range<Kilograms>{{0.1}, {0.1}});  // of 0.405 m2
  build.kept[0].count = 2;
  CHECK(crew_fit(build).empty());
  build.kept[0].count = 3;
  CHECK(weight_of(crew_fit(build), "spot-clean") == Weight::note);
}

TEST_CASE("a damp tank with an animal in it wants a crew") {
  Build build = gecko_box();
  build.crew.clear();
  CHECK(weight_of(crew_fit(build), "crew-missing") == Weight::note);
  build.kind = BuildKind::arid;
  CHECK(crew_fit(build).empty());
  build.kind = BuildKind::humid;
  build.kept.clear();
  CHECK(crew_fit(build).empty());
}

TEST_CASE("two entries of one species are told of once") {
  Build build = gecko_box();
  build.kept[0].facts.body.moults_bare = known(true);
  build.crew = {wood_lice(), wood_lice()};
  build.crew[1].where = place(71, 5);
  const Found all = make_plan(build).findings;
  const auto bites = [](const Finding& f) { return f.rule == "crew-bites"; };
  REQUIRE(std::count_if(all.begin(), all.end(), bites) == 1);
  CHECK(std::find_if(all.begin(), all.end(), bites)->where.line == 70);
}

TEST_CASE("every finding of fit names its place") {
  for (const Build& build : unfit_builds()) {
    for (const Finding& finding : fit(build)) {
      INFO(finding.rule);
      CHECK(finding.where.line > 0);
    }
  }
}
