// A substrate of steps, held by stones and ledges; worked by hand.
#include <algorithm>
#include <catch2/catch.hpp>

#include "builds.h"
#include "plan/fill/fill.h"
#include "plan/fill/scenario.h"
#include "plan/plan.h"

using namespace loamsheet;
using namespace loamsheet::tests;

namespace {

// A stone as wide as the box, 40 mm deep, on the base at the edge of a terrace.
void add_wall(Build& build, const std::string& id, double y, Millimetres height) {
  Furnishing stone;
  stone.id = id, stone.kind = "stone", stone.stands = true;
  stone.at = {450, y, 0};
  stone.width = 900_mm, stone.depth = 40_mm, stone.height = height;
  build.furnishings.push_back(stone);
  Standing standing = block({450, y}, {0.9 * 0.04}, height);
  standing.id = id, standing.kind = "stone";
  build.standing.push_back(standing);
}

// 50 mm at the front, 80 mm from 200 mm on, 120 mm from 350 mm on.
Build terraced() {
  Build build = box_build();
  SubstrateLayer& substrate = build.layers.substrate;
  substrate.front = 50_mm, substrate.back = 120_mm;
  substrate.terraces = {{200_mm, 80_mm, "low", place(33, 5)}, {350_mm, 120_mm, "high", {}}};
  return build;
}

Build walled(Millimetres low = 130_mm, Millimetres high = 170_mm) {
  Build build = terraced();
  add_wall(build, "low", 200, low);
  add_wall(build, "high", 350, high);
  return build;
}

std::vector<std::string> found(const Build& build) {
  std::vector<std::string> rules;
  for (const Finding& f : terrace_findings(build)) {
    CHECK(f.weight == Weight::caution);
    rules.push_back(f.rule);
  }
  return rules;
}

using Rules = std::vector<std::string>;

}  // namespace

TEST_CASE("terraces are filled strip by strip") {
  // 900 mm x (200 x 50 + 150 x 80 + 100 x 120) mm2 = 0.9 x 34 = 30.6 L.
  CHECK(decide(terraced()).layers.substrate.volume.v == Approx(30.6));
  CHECK(substrate_depth(terraced(), 199).v == 50);
  CHECK(substrate_depth(terraced(), 200).v == 80);
  CHECK(substrate_depth(terraced(), 449).v == 120);
  CHECK(decide(terraced()).layers.litter->volume.v == Approx(4.05));
}

TEST_CASE("a background and a water area take their share of the terraces") {
  // The background leaves 70 mm of the last step: 0.9 x (10 + 12 + 8.4) = 27.36 L; the water a
  // third of the floor and so a third of each step.
  Build build = terraced();
  build.enclosure.background = Background{"cork-bark", 30_mm};
  CHECK(decide(build).layers.substrate.volume.v == Approx(27.36));
  build.enclosure.background.reset();
  build.water_area = WaterArea{WaterArea::Side::left, {1.0 / 3}, 100_mm};
  CHECK(decide(build).layers.substrate.volume.v == Approx(30.6 * 2 / 3));
}

TEST_CASE("terraces follow a footprint's shape") {
  // A 600 mm corner tank less the triangle of 250 mm at its front right; steps at 250 and 400 mm.
  // To 250 mm its width grows from 350 to 600 mm: 0.11875 m2 x 50; then 0.09 m2 x 80 and 0.12 m2 x
  // 120 mm: 5.9375 + 7.2 + 14.4 = 27.5375 L.
  Build build = terraced();
  build.enclosure.footprint = cut_corner(600_mm, 250_mm);
  build.layers.substrate.terraces[0].from = 250_mm;
  build.layers.substrate.terraces[1].from = 400_mm;
  CHECK(decide(build).layers.substrate.volume.v == Approx(27.5375));
}

TEST_CASE("one step over the whole floor is a level layer") {
  Build build = terraced();
  build.layers.substrate.terraces = {{0.001_mm, 120_mm, "", {}}};
  CHECK(decide(build).layers.substrate.volume.v == Approx(0.405 * 120).epsilon(1e-5));
}

TEST_CASE("walls of stone as long and as high as their steps hold them") {
  CHECK(found(walled()).empty());
  CHECK(found(terraced()) == Rules{"terrace-not-held", "terrace-not-held"});
}

TEST_CASE("a wall that is short, low or elsewhere does not hold") {
  CHECK(found(walled(129_mm)) == Rules{"terrace-hold-low"});
  Build build = walled();
  build.furnishings[0].width = 870_mm;
  CHECK(found(build) == Rules{"terrace-hold-short"});
  build.furnishings[0].width = 885_mm;  // a finger's breadth is left
  CHECK(found(build).empty());
  build.furnishings[0].at.y = 245;
  CHECK(found(build) == Rules{"terrace-hold-away"});
  build.furnishings[0].at.y = 200, build.furnishings[0].turned = 90;
  CHECK(found(build) == Rules{"terrace-hold-short"});
}

TEST_CASE("a wall on the substrate stands on the lower step") {
  Build build = walled(130_mm, 40_mm);
  build.standing[1].on_base = false;  // from 50 + 80 to 170 mm
  CHECK(found(build).empty());
  build.furnishings[1].height = 39_mm;
  CHECK(found(build) == Rules{"terrace-hold-low"});
}

TEST_CASE("a ledge holds from its foot to its top") {
  Build build = walled();
  build.furnishings[1].kind = "ledge", build.furnishings[1].stands = false;
  build.furnishings[1].at.z = 170, build.furnishings[1].height = 40_mm;
  CHECK(found(build).empty());
  build.furnishings[1].height = 30_mm;
  CHECK(found(build) == Rules{"terrace-hold-open"});
}

TEST_CASE("beside a water area an edge is as long as the land") {
  Build build = walled();
  build.water_area = WaterArea{WaterArea::Side::left, {0.3}, 100_mm};
  build.furnishings[0].width = 620_mm;  // 630 mm of land
  build.furnishings[1].width = 600_mm;
  CHECK(found(build) == Rules{"terrace-hold-short"});
}

TEST_CASE("the highest terrace is held against the openings, and has its marks") {
  Build build = walled();
  build.layers.substrate.terraces = {{200_mm, 190_mm, "low", {}}, {350_mm, 120_mm, "high", {}}};
  Opening side = opening("side", Opening::Where::left, 200_mm);
  build.enclosure.openings = {side};
  const Plan plan = make_plan(build);
  CHECK(plan.layers.profile.highest == 250_mm);
  CHECK(std::any_of(plan.findings.begin(), plan.findings.end(),
                    [](const Finding& f) { return f.rule == "layers-above-sill"; }));
  const auto mark = std::find_if(plan.marks.begin(), plan.marks.end(),
                                 [](const TapeMark& m) { return m.layer == "terrace"; });
  REQUIRE(mark != plan.marks.end());
  CHECK(mark->front == 245_mm);  // the base is 5 mm thick
  CHECK(mark->from == 200_mm);
}
