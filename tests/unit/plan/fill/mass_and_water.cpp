#include <catch2/catch.hpp>

#include "builds.h"
#include "plan/fill/first_watering.h"
#include "plan/fill/mass.h"
#include "plan/fill/water_density.h"

using namespace loamsheet;
using namespace loamsheet::tests;

namespace {

Approx near(double v) {
  return Approx(v).epsilon(1e-9).margin(1e-9);
}

Result middle(const Build& build) {
  const Scenario scenario{std::vector<double>(build.unknowns.size(), 0.5), 0.5, 0.5};
  return evaluate(build, decide(build), scenario);
}

// Of the box: 26.325 L of mix lacking 10 % of its volume in both parts.
constexpr double deficit = 0.405 * 65 * 0.10;

}  // namespace

TEST_CASE("the empty tank is floor and walls, unless its mass is stated") {
  Build build = box_build();
  CHECK(empty_mass(build.enclosure).v == near((0.405 + 2.7 * 0.6) * 5 * 2.5));
  build.enclosure.stated_empty_mass = 36_kg;
  CHECK(empty_mass(build.enclosure) == 36_kg);
}

TEST_CASE("dry mass is tank, dry layers, mesh and stated furnishings") {
  Build build = box_build();
  build.standing.push_back(block({100, 100}, {}, {}));
  build.standing.push_back(block({200, 100}, {}, {}));
  build.standing[1].mass.reset();
  const double layers = 20.25 * 0.67 + 26.325 * 0.125 + 4.05 * 0.06;
  CHECK(middle(build).dry.v == near(25.3125 + layers + 0.4896 * 0.1 + 2));
}

TEST_CASE("wet mass adds field capacity and the water that stands") {
  const Result r = middle(box_build());
  const double held = 20.25 * 0.11 + 26.325 * (0.75 * 0.25 + 0.25 * 0.20) + 4.05 * 0.30;
  CHECK((r.wet - r.dry).v == near((held + deficit * 0.1) * water_density({20}).v / 1000));
}

TEST_CASE("a water area weighs what it holds") {
  Build build = box_build();
  const Result without = middle(build);
  build.water_area = WaterArea{WaterArea::Side::left, {0.3}, 100_mm};
  const Result with = middle(build);
  const double layers = 0.7 * (without.wet - without.dry).v;
  CHECK((with.wet - with.dry).v == near(layers + 12.15 * water_density({20}).v / 1000));
}

TEST_CASE("the first watering wets the substrate and a tenth runs through") {
  const Result r = middle(box_build());
  CHECK(r.first_watering.v == near(deficit * 1.1));
  CHECK(r.standing.v == near(deficit * 0.1 / (0.45 * 0.405)));
}

TEST_CASE("a part that was placed wetter than field capacity takes up nothing") {
  Build build = box_build();
  build.layers.substrate.parts[0].bulk.moisture_as_placed.range = {{0.5}, {0.5}};
  CHECK(middle(build).first_watering.v == near(26.325 * 0.25 * 0.10 * 1.1));
}

TEST_CASE("on a raised floor the same water stands lower") {
  Build build = box_build();
  build.layers.drainage.kind = "raised-floor";
  CHECK(middle(build).standing.v == near(deficit * 0.1 / 0.405));
}

TEST_CASE("without drainage nothing runs through") {
  Build build = box_build();
  build.layers.drainage.kind = "none";
  CHECK(middle(build).first_watering.v == near(deficit));
  CHECK(middle(build).standing.v == 0);
  CHECK_FALSE(highest_standing(build));
}

TEST_CASE("an arid build is not watered through") {
  Build build = box_build();
  build.kind = BuildKind::arid;
  CHECK(middle(build).first_watering.v == 0);
  CHECK(middle(build).standing.v == 0);
}

TEST_CASE("the highest level keeps air under the mesh and is never below the floor") {
  Build build = box_build();
  CHECK(highest_standing(build) == 40_mm);
  build.layers.drainage.depth = 6_mm;
  CHECK(highest_standing(build) == 0_mm);
}
