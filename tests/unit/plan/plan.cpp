#include "plan/plan.h"

#include <catch2/catch.hpp>

#include "builds.h"

using namespace loamsheet;
using namespace loamsheet::tests;

TEST_CASE("an unknown that matters makes the plan provisional and its number a range") {
  const Plan plan = make_plan(with_unknown_moisture(box_build(), 0.05, 0.25));
  CHECK(plan.status == Status::provisional);
  REQUIRE(plan.water.first_watering);
  CHECK_FALSE(plan.water.first_watering->exact());
  CHECK_FALSE(plan.mass.wet.exact());  // the water that stands moves with it
  CHECK(plan.mass.dry.exact());
}

TEST_CASE("an unknown that moves nothing leaves the plan cleared") {
  CHECK(make_plan(with_unknown_moisture(box_build(), 0.30, 0.60)).status == Status::cleared);
}

TEST_CASE("a stop outweighs an unknown") {
  Build build = with_unknown_moisture(box_build(), 0.05, 0.25);
  build.layers.drainage.outlet = "port";
  CHECK(make_plan(build).status == Status::not_cleared);
}

TEST_CASE("the stand's margin is its rating less the wet mass") {
  const MassPlan mass = make_plan(with_unknown_moisture(box_build(), 0.05, 0.25)).mass;
  REQUIRE(mass.stand_margin);
  CHECK(mass.stand_margin->low.v == Approx(150 - mass.wet.high.v));
  CHECK(mass.stand_margin->high.v == Approx(150 - mass.wet.low.v));
}

TEST_CASE("what does not apply has no value") {
  Build build = box_build();
  build.layers.drainage.kind = "none";
  CHECK_FALSE(make_plan(build).water.standing);
  CHECK_FALSE(make_plan(build).water.highest_standing);
  build.kind = BuildKind::arid;
  CHECK_FALSE(make_plan(build).water.first_watering);
  build.enclosure.stand_rating.reset();
  CHECK_FALSE(make_plan(build).mass.stand_margin);
}

TEST_CASE("the animal waits thirty days after planting") {
  const Ready ready = make_plan(box_build()).ready;
  CHECK(iso(ready.earliest) == "2026-04-06");
  CHECK(ready.days == 30);
  CHECK(ready.because == std::vector<std::string>{"after-planting"});
}

TEST_CASE("a move starts the thirty days again, counted from planting") {
  Build build = box_build();
  build.identity.moved = true;
  build.identity.moves_on = parse_date("2026-04-18");
  const Ready ready = make_plan(build).ready;
  CHECK(iso(ready.earliest) == "2026-05-18");
  CHECK(ready.days == 72);
  CHECK(ready.because == std::vector<std::string>{"after-move"});
}

TEST_CASE("the pull list is in building order, with amounts to buy") {
  Build build = box_build();
  build.enclosure.background = Background{"cork-bark", 30_mm};
  build.enclosure.background->fixed_by = "screws";
  const Plan plan = make_plan(build);
  std::vector<std::string> items;
  for (const PullItem& item : plan.pull_list) items.push_back(item.item + ' ' + item.unit);
  CHECK(items == std::vector<std::string>{"cork-bark m2", "expanded-clay L",
                                          "outlet-siphon-tube piece", "fibreglass-mesh m2",
                                          "tree-fern-fibre L", "orchid-bark L", "oak-leaves L",
                                          "water-unknown L"});
  CHECK(plan.pull_list[0].need == Approx(0.9 * 0.6));
  CHECK(plan.pull_list[1].need == Approx(plan.layers.drainage->buy->v));
  CHECK(plan.pull_list[3].need == Approx(0.96 * 0.51));
}

TEST_CASE("a raised floor is pulled by its area") {
  Build build = box_build();
  build.layers.drainage.kind = "raised-floor";
  const PullItem item = make_plan(build).pull_list[0];
  CHECK(item.item == "raised-floor");
  CHECK(item.unit == "m2");
  CHECK(item.need == Approx(0.405));
}

TEST_CASE("the plan of a box, whole") {
  Build build = with_unknown_moisture(box_build(), 0.05, 0.25);
  CHECK(dump(build, make_plan(build)) == R"(plan v1
status provisional
footprint
  area 0.405 m2
  perimeter 2700.000 mm
drainage
  volume 20.250 L
  buy 21.262 L
  dry 13.568 kg
  voids 9.113 L
separator
  area 0.490 m2
  width 960.000 mm
  depth 510.000 mm
substrate
  volume 26.325 L
  buy 32.432 L
  dry 3.291 kg
part tree-fern-fibre
  volume 19.744 L
  buy 24.324 L
  dry 1.974 kg
part orchid-bark
  volume 6.581 L
  buy 8.108 L
  dry 1.316 kg
litter
  volume 4.050 L
  buy 4.455 L
  dry 0.243 kg
profile
  drainage 50.000 mm
  substrate-front 100.000 mm
  substrate-back 130.000 mm
  litter-front 110.000 mm
  litter-back 140.000 mm
mass
  empty 25.313 kg
  dry 42.463 kg
  wet 52.206..52.600 kg
  stand-margin 97.400..97.794 kg
water
  first-watering 0.724..5.068 L
  standing 0.361..2.528 mm
  highest-standing 40.000 mm
pull expanded-clay 21.262 L
pull outlet-siphon-tube 1.000 piece
pull fibreglass-mesh 0.490 m2
pull tree-fern-fibre 24.324 L
pull orchid-bark 8.108 L
pull oak-leaves 4.455 L
pull water-unknown 5.068 L
mark waterline 45.000 45.000 mm
mark drainage 55.000 55.000 mm
mark substrate 105.000 135.000 mm
mark litter 115.000 145.000 mm
cut separator fibreglass-mesh 1 x 960.000 510.000 mm
stand-load 124.744 125.686 kg/m2
air winter-day temperature 0.000..0.000 humidity 1.000..1.000 vent 0.000..0.000 lost 0.000..0.000
air winter-night temperature 0.000..0.000 humidity 1.000..1.000 vent 0.000..0.000 lost 0.000..0.000
air summer-day temperature 0.000..0.000 humidity 1.000..1.000 vent 0.000..0.000 lost 0.000..0.000
air summer-night temperature 0.000..0.000 humidity 1.000..1.000 vent 0.000..0.000 lost 0.000..0.000
heat needed-day - needed-night - fitted 0.000 W month 0.000 kWh
lift
  limit 7.430 kg
  index 3.407 of the limit
  people 3 and gear
ready 2026-04-06 day 30 after-planting
caution value-unknown 32:90 input=layers.substrate.placed range=dry–damp from=catalogue
caution lift-too-heavy 0:0 mass=25.313 limit=7.430 people=3
)");
}
