// What is marked, cut, dosed, held up and moved, worked by hand.
#include <algorithm>
#include <catch2/catch.hpp>

#include "builds.h"
#include "living.h"
#include "plan/plan.h"

using namespace loamsheet;
using namespace loamsheet::tests;

namespace {

const TapeMark& mark(const Plan& plan, const std::string& layer) {
  const auto at = std::find_if(plan.marks.begin(), plan.marks.end(),
                               [&](const TapeMark& m) { return m.layer == layer; });
  REQUIRE(at != plan.marks.end());
  return *at;
}

const Cut& cut(const Plan& plan, const std::string& use) {
  const auto at =
      std::find_if(plan.cuts.begin(), plan.cuts.end(), [&](const Cut& c) { return c.use == use; });
  REQUIRE(at != plan.cuts.end());
  return *at;
}

const PullItem* pulled(const Plan& plan, const std::string& id) {
  for (const PullItem& item : plan.pull_list) {
    if (item.item == id) return &item;
  }
  return nullptr;
}

std::optional<Weight> fired(const Build& build, const std::string& rule) {
  for (const Finding& f : make_plan(build).findings) {
    if (f.rule == rule) return f.weight;
  }
  return std::nullopt;
}

Furnishing fixed_thing(const char* fixed_by, Kilograms mass) {
  Furnishing thing;
  thing.id = "shelf", thing.kind = "ledge";
  thing.at = {450, 400, 300};
  if (fixed_by) thing.fixed_by = fixed_by;
  thing.mass = mass;
  return thing;
}

Build with_water(Millimetres depth) {
  Build build = box_build();
  build.water_area = WaterArea{WaterArea::Side::left,     {0.3}, depth, true, place(40, 3),
                               Dam{"glass", 5_mm, {2500}}};
  return build;
}

Build with_stone(Kilograms mass, bool on_base) {
  Build build = box_build();
  Standing stone = block({300, 200}, {0.01}, 50_mm);
  stone.id = "slab", stone.kind = "stone", stone.mass = mass, stone.on_base = on_base;
  build.standing.push_back(stone);
  return build;
}

}  // namespace

TEST_CASE("tape stands at each layer's top, above the lower edge of a base 5 mm thick") {
  const Plan plan = make_plan(box_build());
  CHECK(mark(plan, "drainage").front == 55_mm);
  CHECK(mark(plan, "waterline").back == 45_mm);
  CHECK(mark(plan, "substrate").front == 105_mm);
  CHECK(mark(plan, "substrate").back == 135_mm);
  CHECK(mark(plan, "litter").front == 115_mm);
  CHECK(mark(plan, "litter").back == 145_mm);
}

TEST_CASE("a separator narrower than its roll is one piece, a wider one joined strips") {
  // 960 x 510 mm fits a roll of 1 m. On a roll of 400 mm the 510 mm want two strips of
  // (510 + 50) / 2 = 280 mm, each 960 mm long.
  Build build = box_build();
  CHECK(cut(make_plan(build), "separator").count == 1);
  build.layers.separator->roll_width = 400_mm;
  const Plan plan = make_plan(build);
  const Cut& strips = cut(plan, "separator");
  CHECK(strips.count == 2);
  CHECK(strips.width == 960_mm);
  CHECK(strips.depth.v == Approx(280));
  CHECK(*strips.overlap == 50_mm);
  CHECK(pulled(plan, "fibreglass-mesh")->need == Approx(2 * 0.960 * 0.280));
}

TEST_CASE("a raised floor's supports share the wet load above them") {
  // 900 x 450 mm at 150 mm: 7 x 4 = 28 supports. Substrate 26.325 L: 3/4 of it 100 + 0.25 x 998.2,
  // 1/4 200 + 0.20 x 998.2 kg/m3, so 361.5 kg/m3 and 9.52 kg; litter 4.05 L at 60 + 0.3 x 998.2
  // kg/m3, so 1.46 kg; 10.97 kg in all, 0.392 kg on each.
  Build build = box_build();
  build.layers.drainage.kind = "raised-floor";
  const Plan plan = make_plan(build);
  REQUIRE(plan.supports);
  CHECK(plan.supports->count == 28);
  CHECK(plan.supports->load.v == Approx(0.392).epsilon(0.005));
  CHECK(pulled(plan, "floor-support")->need == 28);
}

TEST_CASE("a dose follows the label, by volume and by area") {
  // 15 g per 4 L at half strength: 1.875 g/L x 26.325 L = 49.36 g; at 750 kg/m3 65.8 mL, 13.2
  // teaspoons; 4 % of nitrogen: 1.875 x 4 x 10 = 75 mg/L. 50 g/m2 on 0.405 m2: 20.25 g.
  Build build = box_build();
  Amendment feed{"organic-starter-feed", 3.75, false, {0.5}};
  feed.density = KilogramsPerCubicMetre{750}, feed.nitrogen = Fraction{0.04};
  build.amendments = {feed, {"organic-starter-feed", 50, true}};
  const Plan plan = make_plan(build);
  REQUIRE(plan.doses.size() == 2);
  CHECK(plan.doses[0].dose.v == Approx(0.04936).epsilon(0.001));
  CHECK(*plan.doses[0].teaspoons == Approx(13.16).epsilon(0.001));
  CHECK(*plan.doses[0].nitrogen_mg_l == Approx(75));
  CHECK(plan.doses[1].dose.v == Approx(0.02025));
  CHECK_FALSE(plan.doses[1].teaspoons);
  CHECK(pulled(plan, "organic-starter-feed")->unit == "kg");
}

TEST_CASE("more than the label's rate is a stop") {
  Build build = box_build();
  build.amendments = {{"organic-starter-feed", 3.75, false, {1.0}}};
  CHECK_FALSE(fired(build, "amendment-over-strength"));
  build.amendments[0].strength = {1.01};
  CHECK(fired(build, "amendment-over-strength") == Weight::stop);
}

TEST_CASE("cultures are suggested by the floor, in whole ones") {
  // 2000 springtails a square metre on 0.405 m2 are 810, so one culture of 1000; 10000 want 5.
  Build build = box_build();
  CrewUse crew;
  crew.facts.id = crew.facts.name = "springtail";
  crew.facts.group = known<std::string>("springtail");
  crew.facts.density = known(Range<double>{2000, 5000});
  build.crew = {crew};
  CHECK(make_plan(build).crew[0].suggested == 1);
  CHECK_FALSE(fired(build, "crew-thin"));
  build.crew[0].facts.density = known(Range<double>{10000, 20000});
  CHECK(make_plan(build).crew[0].suggested == 5);
  CHECK(fired(build, "crew-thin") == Weight::note);
  CHECK(pulled(make_plan(build), "springtail")->need == 1);
}

TEST_CASE("a fixing bears the thing, its wet pocket and an animal that lands") {
  // 1.5 L of mix at 361.5 kg/m3 is 0.542 kg; an animal of 45 g lands with 0.09 kg.
  Build build = box_build();
  build.kept.resize(1);
  build.kept[0].mass = 0.045_kg;
  build.furnishings = {fixed_thing("silicone", 0.6_kg)};
  build.furnishings[0].pocket = 1.5_L;
  const Plan plan = make_plan(build);
  REQUIRE(plan.fixed.size() == 1);
  CHECK(plan.fixed[0].sum().v == Approx(0.6 + 0.542 + 0.09).epsilon(0.002));
  CHECK(plan.mass.dry.low.v == Approx(make_plan(box_build()).mass.dry.low.v + 0.6 + 1.5 * 0.125));
}

TEST_CASE("a fixing that is not stated, or a magnet that bears too much, is found") {
  Build build = box_build();
  build.furnishings = {fixed_thing("magnet", 0.9_kg)};
  CHECK_FALSE(fired(build, "magnet-overloaded"));
  CHECK_FALSE(fired(build, "fixing-not-stated"));
  build.furnishings[0].mass = 1.1_kg;
  CHECK(fired(build, "magnet-overloaded") == Weight::caution);
  build.furnishings[0].fixed_by.reset();
  CHECK(fired(build, "fixing-not-stated") == Weight::note);
  build.furnishings[0].mass.reset();
  CHECK(fired(build, "mass-not-stated") == Weight::note);
}

TEST_CASE("a basking spot of which nothing is stated is a place, and held by nothing") {
  Build build = box_build();
  build.furnishings = {fixed_thing(nullptr, 0.9_kg)};
  build.furnishings[0].kind = "basking-spot";
  CHECK(fired(build, "fixing-not-stated") == Weight::note);
  CHECK(plan_fixed(build).size() == 1);
  build.furnishings[0].mass.reset();
  CHECK_FALSE(fired(build, "fixing-not-stated"));
  CHECK_FALSE(fired(build, "mass-not-stated"));
  CHECK(plan_fixed(build).empty());
}

TEST_CASE("the water area's dam, its way against the glass, and its filter") {
  // 30 % of 900 x 450 mm to 100 mm: 12.15 L, a dam 450 mm long and as high as the substrate beside
  // it, 130 mm. The longest pane of the water is 450 mm, the side: 998.2 x 9.80665 x 0.1^2 / 2 x
  // 0.45 = 22.03 N; 0.979 kPa at the floor.
  const Plan plan = make_plan(with_water(100_mm));
  REQUIRE(plan.water_area);
  CHECK(plan.water_area->volume.v == Approx(12.15));
  CHECK(plan.water_area->dam_length.v == Approx(450));
  CHECK(plan.water_area->dam_height == 130_mm);
  CHECK(plan.water_area->pane_load_n == Approx(22.03).epsilon(0.001));
  CHECK(plan.water_area->floor_pressure_kpa == Approx(0.979).epsilon(0.001));
  CHECK(make_plan(with_water(150_mm)).water_area->dam_height == 170_mm);
  CHECK(pulled(plan, "filter")->need == 1);
  CHECK(pulled(plan, "glass")->need == Approx(0.45 * 0.13));
  // 0.45 x 0.13 m of 5 mm glass, 2.5 kg to the square metre and millimetre.
  CHECK(plan.water_area->dam.v == Approx(0.45 * 0.13 * 5 * 2.5));
  CHECK(fired(with_water(100_mm), "filter-electricity") == Weight::caution);
}

TEST_CASE("a dam is as long as the tank is deep there, on either side and whatever its share") {
  for (const auto side : {WaterArea::Side::left, WaterArea::Side::right}) {
    for (const double share : {0.2, 0.25, 0.3, 0.5, 2.0 / 3}) {
      Build build = with_water(100_mm);
      build.water_area->side = side, build.water_area->floor = {share};
      CHECK(make_plan(build).water_area->dam_length.v == Approx(450));
      build.enclosure.background = Background{"cork-bark", 30_mm, "silicone"};
      CHECK(make_plan(build).water_area->dam_length.v == Approx(420));
    }
  }
}

TEST_CASE("a foam background under water pulls at its bond") {
  // 270 x 30 mm to 100 mm: 0.81 L; at 45 kg/m3 it pulls with 0.81 x (998.2 - 45) g = 0.772 kg.
  Build build = with_water(100_mm);
  build.enclosure.background = Background{"foam", 30_mm, "wedged", KilogramsPerCubicMetre{45}};
  CHECK(make_plan(build).water_area->uplift->v == Approx(0.772).epsilon(0.002));
  CHECK(fired(build, "background-may-float") == Weight::caution);
  build.enclosure.background->fixed_by = "silicone";
  CHECK_FALSE(fired(build, "background-may-float"));
  build.enclosure.background->density = KilogramsPerCubicMetre{1200};
  CHECK_FALSE(make_plan(build).water_area->uplift);
}

TEST_CASE("sealing materials are fetched for what they hold") {
  // 0.9 x 0.6 m in beads 0.15 m apart: 3.6 m; a shelf 0.4 m; 0.05 L on a metre: 0.2 L.
  Build build = box_build();
  build.enclosure.background = Background{"cork-bark", 30_mm, "silicone"};
  build.furnishings = {fixed_thing("silicone", 0.5_kg)};
  CHECK(pulled(make_plan(build), "silicone")->need == Approx(0.2));
  build.enclosure.background->fixed_by = "foam";
  CHECK(pulled(make_plan(build), "silicone")->need == Approx(0.02));
  CHECK(pulled(make_plan(build), "mounting-foam")->need == 1);
  build.enclosure.background->fixed_by = "screws";
  CHECK_FALSE(pulled(make_plan(build), "mounting-foam"));
  CHECK(pulled(make_plan(build), "screw")->need == 4);
  build.furnishings = {fixed_thing("foam", 0.5_kg), fixed_thing("screws", 0.5_kg),
                       fixed_thing("magnet", 0.5_kg)};
  CHECK(pulled(make_plan(build), "mounting-foam")->need == 1);
  CHECK(pulled(make_plan(build), "screw")->need == 6);
  CHECK(pulled(make_plan(build), "magnet")->need == 1);
}

TEST_CASE("the pockets of ledges are filled with more of the mix") {
  // 3 L in pockets, bought x 1.12; three quarters of the mix are fibre. Their mass and the water
  // that they lack are the tank's.
  Build build = box_build();
  build.furnishings = {fixed_thing("silicone", 0.5_kg)};
  const Plan without = make_plan(build);
  build.furnishings[0].pocket = 3_L;
  const Plan with = make_plan(build);
  CHECK(with.layers.substrate.buy == without.layers.substrate.buy);
  CHECK((with.layers.substrate.blend - with.layers.substrate.buy).v == Approx(3 * 1.12));
  const auto fibre = [](const Plan& plan) { return pulled(plan, "tree-fern-fibre")->need; };
  CHECK(fibre(with) - fibre(without) == Approx(3 * 1.12 * 0.75));
  CHECK((with.mass.dry.low - without.mass.dry.low).v == Approx(3 * 0.125));
  CHECK((with.water.first_watering->low - without.water.first_watering->low).v ==
        Approx(3 * 0.10 * 1.1));
}

TEST_CASE("moss is bought by area, and takes its share of the land from the litter") {
  // A fifth of 0.405 m2 is 0.081 m2; 20 mm deep 1.62 L; at 30 kg/m3 0.0486 kg.
  Build build = box_build();
  build.layers.moss = MossLayer{bulk("sheet-moss", 30, 0.30, 0.10), 20_mm, Fraction{0.2}, {}};
  const Plan plan = make_plan(build);
  CHECK(plan.layers.moss->area.v == Approx(0.081));
  CHECK(plan.layers.moss->dry.low.v == Approx(0.0486));
  CHECK(pulled(plan, "sheet-moss")->need == Approx(0.081));
  CHECK(pulled(plan, "sheet-moss")->unit == "m2");
  CHECK(plan.layers.litter->volume.v == Approx(4.05 * 0.8));
  CHECK(plan.layers.profile.highest == 150_mm);  // 50 + 80 mm, and moss instead of 10 mm of litter
  build.layers.moss->floor.reset(), build.layers.moss->area = SquareMetres{0.1};
  CHECK(make_plan(build).layers.moss->area.v == Approx(0.1));
}

TEST_CASE("moss sold by the litre lies as deep as it is laid") {
  Build build = box_build();
  build.layers.moss = MossLayer{bulk("sheet-moss", 30, 0.30, 0.10), 20_mm, Fraction{0.2}, {}};
  build.stock = std::vector<StockedPack>{{"sheet-moss", "L", 1, Money{50000}, 9, "C3", {}}};
  CHECK(pulled(make_plan(build), "sheet-moss")->packs.at(0).count == 2);  // 1 L covers 0.05 m2
}

TEST_CASE("heavy stones stand on the base, most of all above one that digs") {
  CHECK_FALSE(fired(with_stone(1.9_kg, false), "stone-on-substrate"));
  CHECK(fired(with_stone(2.1_kg, false), "stone-on-substrate") == Weight::caution);
  CHECK_FALSE(fired(with_stone(2.1_kg, true), "stone-on-substrate"));
  Build dug = with_stone(1.1_kg, false);
  dug.kept.resize(1);
  dug.kept[0].facts.digs = known(true);
  CHECK(fired(dug, "stone-over-digger") == Weight::stop);
  CHECK_FALSE(fired(dug, "stone-undermined"));
  dug.standing[0].mass = 0.9_kg;
  CHECK_FALSE(fired(dug, "stone-over-digger"));
}

TEST_CASE("a tube on the base takes up a cylinder, or nothing where the layers fill it") {
  // A tube 300 mm long and 100 mm across, half of it in 50 mm of granules: pi / 8 x 100^2 x 300 mm3
  // = 1.178 L; the other half, under substrate of 69.3 mm there, likewise.
  Build build = box_build();
  const double granules = make_plan(build).layers.drainage->volume.v;
  Standing tube = block({450, 300}, {0.03}, 100_mm);
  tube.kind = "tube";
  build.standing = {tube};
  CHECK(make_plan(build).layers.drainage->volume.v == Approx(granules - 1.178).epsilon(0.0001));
  build.standing[0].filled = true;
  CHECK(make_plan(build).layers.drainage->volume.v == Approx(granules));
}

TEST_CASE("what is moved is drained, with the stones out") {
  Build build = with_stone(2_kg, true);
  CHECK_FALSE(make_plan(build).transport);
  build.identity.moved = true;
  build.identity.moves_on = parse_date("2026-04-18");
  const Plan plan = make_plan(build);
  REQUIRE(plan.transport);
  CHECK(plan.transport->taken_out == 2_kg);
  CHECK(plan.transport->stones == std::vector<std::string>{"slab"});
  CHECK(plan.transport->mass.high < plan.mass.wet.high - 2_kg);
  CHECK(plan.transport->mass.low > plan.mass.dry.low - 2_kg);
}

TEST_CASE("the stand bears the wet tank on the outside of its base") {
  // 0.405 m2 and 2.7 m x 5 mm of walls: 0.4185 m2.
  const Plan plan = make_plan(box_build());
  CHECK(plan.mass.stand_load.high == Approx(plan.mass.wet.high.v / 0.4185));
}

TEST_CASE("the heaviest sack is lifted as the equation says") {
  // 50 L of clay at 670 kg/m3 with 2 % of water: 34.5 kg. From the floor, held 45 cm away, to a
  // stand of 75 cm: 23 x 25/45 x 0.775 x 0.88 x 0.90 = 7.84 kg.
  Build build = box_build();
  build.stock = {{"expanded-clay", "L", 50, Money{310000}, 5, "", {}},
                 {"orchid-bark", "L", 10, Money{50000}, 5, "", {}}};
  const Plan plan = make_plan(build);
  REQUIRE(plan.sack);
  CHECK(plan.sack->item == "expanded-clay");
  CHECK(plan.sack->mass.v == Approx(34.5));
  CHECK(plan.sack->limit.v == Approx(7.84).epsilon(0.002));
  CHECK(fired(build, "sack-heavy") == Weight::note);
}
