#include "plan/fill/fill.h"

#include <catch2/catch.hpp>
#include <cmath>
#include <numbers>

#include "builds.h"
#include "plan/fill/scenario.h"

using namespace loamsheet;
using namespace loamsheet::tests;

namespace {

Approx near(double v) {
  return Approx(v).epsilon(1e-9).margin(1e-9);
}

LayersPlan layers_of(const Build& build) {
  return decide(build).layers;
}

Standing stone_at(Point at, double height) {
  return block(at, {0.015}, {height});
}

}  // namespace

TEST_CASE("layers of a plain box are areas times depths") {
  const LayersPlan plan = layers_of(box_build());
  REQUIRE(plan.drainage);
  CHECK(plan.drainage->volume.v == near(0.405 * 50));
  CHECK(plan.drainage->buy->v == near(0.405 * 50 * 1.05));
  CHECK(plan.drainage->voids.v == near(0.405 * 50 * 0.45));
  CHECK(plan.drainage->dry->low.v == near(0.405 * 50 * 0.67));
  CHECK(plan.substrate.volume.v == near(0.405 * 65));
  CHECK(plan.substrate.buy.v == near(0.405 * 65 * 1.12 * 1.10));
  CHECK(plan.litter->volume.v == near(0.405 * 10));
  CHECK(plan.litter->buy.v == near(0.405 * 10 * 1.10));
}

TEST_CASE("the parts of a mix sum to the mix") {
  const SubstratePlan plan = layers_of(box_build()).substrate;
  REQUIRE(plan.parts.size() == 2);
  CHECK(plan.parts[0].volume.v == near(plan.volume.v * 0.75));
  CHECK((plan.parts[0].buy + plan.parts[1].buy).v == near(plan.buy.v));
  CHECK((plan.parts[0].dry.low + plan.parts[1].dry.low).v == near(plan.dry.low.v));
  CHECK(plan.dry.low.v == near(plan.volume.v * (0.75 * 100 + 0.25 * 200) / 1000));
}

TEST_CASE("a range of densities gives a range of dry mass") {
  Build build = box_build();
  build.layers.litter->bulk.dry_density = {{40}, {80}};
  const LitterPlan plan = *layers_of(build).litter;
  CHECK(plan.dry.low.v == near(4.05 * 0.04));
  CHECK(plan.dry.high.v == near(4.05 * 0.08));
}

TEST_CASE("the separator is the box and two turn-ups each way") {
  const SeparatorPlan plan = *layers_of(box_build()).separator;
  CHECK(plan.cut_width.v == near(960));
  CHECK(plan.cut_depth.v == near(510));
  CHECK(plan.area.v == near(0.96 * 0.51));
}

TEST_CASE("a slope over a bow front follows the box of the footprint") {
  Build build = box_build();
  build.enclosure.footprint = bow_front(900_mm, 450_mm, 120_mm);
  const Region& footprint = build.enclosure.footprint;
  // By hand: depth is 50 mm at y = -120 and 80 mm at y = 450.
  const double depth = 50 + 30 * (centroid(footprint).y + 120) / 570;
  CHECK(layers_of(build).substrate.volume.v == near(area(footprint).v * depth));
  CHECK(substrate_depth(build, -120).v == near(50));
  CHECK(substrate_depth(build, 450).v == near(80));
}

TEST_CASE("the volume under a slope is that of its slices") {
  Build build = box_build();
  build.enclosure.footprint = cut_corner(600_mm, 250_mm);
  double sum = 0;
  for (int i = 0; i < 6000; ++i) {  // slices of 0.1 mm from front to back
    const double y = (i + 0.5) * 0.1, width = y < 250 ? 350 + y : 600;
    sum += width * 0.1 * (50 + 30 * y / 600) / 1e6;
  }
  CHECK(layers_of(build).substrate.volume.v == Approx(sum).epsilon(1e-6));
}

TEST_CASE("a background takes its strip from every layer, not from the mesh") {
  Build build = box_build();
  build.enclosure.background = Background{"cork-bark", 30_mm};
  const LayersPlan plan = layers_of(build);
  CHECK(plan.drainage->volume.v == near(0.9 * 0.42 * 50));
  CHECK(plan.substrate.volume.v == near(0.9 * 0.42 * (50 + 30 * 210 / 450.0)));
  CHECK(plan.separator->cut_depth.v == near(510));
  CHECK(background_length(build.enclosure).v == near(900));
}

TEST_CASE("a water area takes its share of the whole floor") {
  for (const auto side : {WaterArea::Side::left, WaterArea::Side::right}) {
    Build build = box_build();
    build.water_area = WaterArea{side, {0.3}, 100_mm};
    const Decisions decisions = decide(build);
    CHECK(decisions.water_area.v == near(0.405 * 0.3 * 100));
    CHECK(decisions.layers.drainage->volume.v == near(0.405 * 0.7 * 50));
  }
}

TEST_CASE("a water area of a round tank is cut off to its share") {
  Build build = box_build();
  build.enclosure.footprint = circle(600_mm);
  build.water_area = WaterArea{WaterArea::Side::left, {0.25}, 100_mm};
  const Ground parts = ground(build);
  CHECK(area(parts.water).v == near(std::numbers::pi * 0.09 / 4));
  CHECK(area(parts.land).v == near(std::numbers::pi * 0.09 * 3 / 4));
  CHECK(extent(parts.water).right < 300);
}

TEST_CASE("a stone on the base takes room in each layer that it reaches") {
  Build build = box_build();
  build.standing.push_back(stone_at({400, 225}, 70));  // 50 mm in the drainage, 20 in the substrate
  const LayersPlan plan = layers_of(build), without = layers_of(box_build());
  CHECK((without.drainage->volume - plan.drainage->volume).v == near(0.015 * 50));
  CHECK((without.substrate.volume - plan.substrate.volume).v == near(0.015 * 20));
  CHECK(plan.litter->volume.v == near(without.litter->volume.v));
}

TEST_CASE("a tall stone takes the whole depth of the layers where it stands") {
  Build build = box_build();
  build.standing.push_back(stone_at({400, 45}, 300));
  const LayersPlan plan = layers_of(build), without = layers_of(box_build());
  CHECK((without.substrate.volume - plan.substrate.volume).v == near(0.015 * 53));
  CHECK((without.litter->volume - plan.litter->volume).v == near(0.015 * 10));
}

TEST_CASE("a stone on the substrate takes no room; one in the water takes water") {
  Build build = box_build();
  build.standing.push_back(stone_at({400, 225}, 70));
  build.standing[0].on_base = false;
  CHECK(layers_of(build).drainage->volume.v == near(0.405 * 50));
  build.standing[0] = stone_at({100, 225}, 70);
  build.water_area = WaterArea{WaterArea::Side::left, {0.3}, 100_mm};
  const Decisions decisions = decide(build);
  CHECK(decisions.layers.drainage->volume.v == near(0.405 * 0.7 * 50));
  CHECK(decisions.water_area.v == near(0.405 * 0.3 * 100 - 0.015 * 70));
}

TEST_CASE("a raised floor is all voids and is not bought by volume") {
  Build build = box_build();
  build.layers.drainage.kind = "raised-floor";
  const DrainagePlan plan = *layers_of(build).drainage;
  CHECK(plan.voids == plan.volume);
  CHECK_FALSE(plan.buy);
  CHECK_FALSE(plan.dry);
}

TEST_CASE("without drainage the substrate stands on the base") {
  Build build = box_build();
  build.layers.drainage.kind = "none";
  const LayersPlan plan = layers_of(build);
  CHECK_FALSE(plan.drainage);
  CHECK(plan.profile.drainage_top.v == 0);
  CHECK(plan.profile.substrate_back.v == 80);
}

TEST_CASE("the profile stacks the layers") {
  const Profile p = layers_of(box_build()).profile;
  CHECK(p.drainage_top.v == 50);
  CHECK(p.substrate_front.v == 100);
  CHECK(p.substrate_back.v == 130);
  CHECK(p.litter_front.v == 110);
  CHECK(p.litter_back.v == 140);
}
