// Six builds, one of each shape of footprint, worked by hand; our numbers agree within 0.5 %.
#include <catch2/catch.hpp>

#include "../cases/overlay.h"
#include "data/data.h"
#include "job/job.h"

using namespace loamsheet;

namespace {

struct ByHand {
  const char* footprint;
  double area, drainage, substrate, buy, cut_width, cut_depth;
};

Plan planned(const std::string& footprint) {
  const std::string spec =
      "build: {title: T, reference: TT-0196, plant_on: 2026-03-07}\n"
      "enclosure:\n"
      "  footprint: {" +
      footprint +
      "}\n"
      "  height: 60 cm\n"
      "  walls: {material: glass, thickness: 5 mm}\n"
      "  openings:\n    - {name: lid, where: top, area: 100 cm2}\n"
      "layers:\n"
      "  drainage: {kind: granules, material: expanded-clay, depth: 5 cm}\n"
      "  separator: {material: fibreglass-mesh, turn_up: 3 cm}\n"
      "  substrate: {mix: woodland, front: 5 cm, back: 8 cm, settling: 12 %, hold_back: 10 %}\n";
  Overlay world("shape.yaml", spec);
  auto outcome = plan_spec(world, "shape.yaml", "");
  INFO(render(outcome.messages, nullptr));
  REQUIRE(outcome);
  return std::move(outcome.value->plan);
}

void agrees(const ByHand& hand) {
  const Plan plan = planned(hand.footprint);
  const auto near = [](double v) { return Approx(v).epsilon(0.005); };
  CHECK(plan.footprint_area.v == near(hand.area));
  CHECK(plan.layers.drainage->volume.v == near(hand.drainage));
  CHECK(plan.layers.substrate.volume.v == near(hand.substrate));
  CHECK(plan.layers.substrate.buy.v == near(hand.buy));
  CHECK(plan.layers.separator->cut_width.v == near(hand.cut_width));
  CHECK(plan.layers.separator->cut_depth.v == near(hand.cut_depth));
}

}  // namespace

// Everywhere: drainage 5 cm deep; substrate 5 cm at the front of the box, 8 cm at its back, so at
// the centroid's share s of the way back 5 + 3 s cm; bought x 1.12 x 1.10 = 1.232; the separator is
// the box and 2 x 3 cm.

TEST_CASE("a rectangle, by hand") {
  // 9.0 x 4.5 dm = 40.5 dm2; x 0.5 = 20.25 L; centroid half way back: 0.65 dm x 40.5 = 26.325 L;
  // x 1.232 = 32.43 L
  agrees({"shape: rectangle, width: 90 cm, depth: 45 cm", 0.405, 20.25, 26.325, 32.43, 960, 510});
}

TEST_CASE("a bow-front, by hand") {
  // Chord c = 60, bulge h = 9 cm: radius c^2/8h + h/2 = 50 + 4.5 = 54.5 cm; half angle
  // asin(30/54.5) = 0.58293 rad; segment r^2 (a - sin a cos a) = 2970.25 (0.58293 - 0.55046 x
  // 0.83486) = 2970.25 x 0.12337 = 366.4 cm2. Box 60 x 40 = 2400 cm2; in all 2766.4 cm2.
  // Centroid of the segment from its circle's centre: c^3/12A = 216000/4396.8 = 49.13 cm; the
  // chord lies 54.5 - 9 = 45.5 cm from it, so 3.63 cm in front of the chord.
  // From the front of the box (9 cm before the chord): (2400 x 29 + 366.4 x 5.37) / 2766.4 =
  // 25.87 cm of 49 cm: s = 0.5280. Substrate 6.584 cm x 2766.4 = 18.21 L; x 1.232 = 22.44 L.
  agrees({"shape: bow-front, width: 60 cm, depth: 40 cm, bulge: 9 cm", 0.27664, 13.832, 18.21,
          22.44, 660, 550});
}

TEST_CASE("a corner, by hand") {
  // 60 x 60 less a triangle of 30 x 30 / 2 at the front right: 3600 - 450 = 3150 cm2. The
  // triangle's centroid lies 10 cm from the front: (3600 x 30 - 450 x 10) / 3150 = 32.86 cm of
  // 60: s = 0.5476. Substrate 6.643 cm x 3150 = 20.925 L; x 1.232 = 25.78 L.
  agrees({"shape: corner, width: 60 cm, cut: 30 cm", 0.315, 15.75, 20.925, 25.78, 660, 660});
}

TEST_CASE("a hexagon, by hand") {
  // 50 cm across flats: 0.8660 x 2500 = 2165 cm2, flats front and back, so the box is 50 cm deep
  // and 50 / 0.8660 = 57.74 cm wide. Half way back: 6.5 cm x 2165 = 14.07 L; x 1.232 = 17.34 L.
  agrees({"shape: hexagon, width: 50 cm", 0.2165, 10.825, 14.07, 17.34, 637.4, 560});
}

TEST_CASE("a round one, by hand") {
  // 3.14159 / 4 x 50^2 = 1963.5 cm2; 6.5 cm x 1963.5 = 12.763 L; x 1.232 = 15.72 L.
  agrees({"shape: round, width: 50 cm", 0.19635, 9.8175, 12.763, 15.72, 560, 560});
}

TEST_CASE("an outline, by hand") {
  // (0,0) (80,0) (80,30) (40,50) (0,30) cm: a box of 80 x 30 = 2400 cm2 and a triangle of base 80
  // and height 20, 800 cm2, on its back: 3200 cm2. Centroids 15 and 36.67 cm from the front:
  // (2400 x 15 + 800 x 36.67) / 3200 = 20.42 cm of 50: s = 0.4083. Substrate 6.225 cm x 3200 =
  // 19.92 L; x 1.232 = 24.54 L.
  agrees(
      {"shape: outline, points: [[0 cm, 0 cm], [80 cm, 0 cm], [80 cm, 30 cm], [40 cm, 50 cm], "
       "[0 cm, 30 cm]]",
       0.32, 16.0, 19.92, 24.54, 860, 560});
}
