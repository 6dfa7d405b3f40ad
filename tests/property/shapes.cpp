// Six builds, one of each shape of footprint, worked by hand through the whole chain: floor, wall,
// layers, what is bought, what is cut, masses dry and wet. Our numbers agree within 0.5 %.
#include <catch2/catch.hpp>

#include "../cases/overlay.h"
#include "data/data.h"
#include "job/job.h"

using namespace loamsheet;

namespace {

// In m2, m, litres, kg and mm.
struct ByHand {
  const char* footprint;
  double area, around, empty;
  double drainage, voids, drainage_dry;
  double substrate, buy, substrate_dry;
  double cut_width, cut_depth, dry, wet;
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
      "  drainage: {kind: granules, material: balls, depth: 5 cm}\n"
      "  separator: {material: net, turn_up: 3 cm}\n"
      "  substrate: {mix: blend, front: 5 cm, back: 8 cm, settling: 12 %, hold_back: 10 %}\n"
      "mixes: {blend: {coarse: 3, fine: 1}}\n"
      "materials:\n"
      "  balls: {role: drainage, dry_density: 600 kg/m3, voids: 40 %, field_capacity: 10 %}\n"
      "  net: {role: separator, areal_mass: 100 g/m2}\n"
      "  coarse: {role: substrate, dry_density: 100 kg/m3, voids: 60 %, field_capacity: 20 %, "
      "moisture_damp: 10 %}\n"
      "  fine: {role: substrate, dry_density: 300 kg/m3, voids: 20 %, field_capacity: 40 %, "
      "moisture_damp: 30 %}\n";
  Overlay world("shape.yaml", spec);
  auto outcome = plan_spec(world, "shape.yaml", "");
  INFO(render(outcome.messages, nullptr));
  REQUIRE(outcome);
  return std::move(outcome.value->plan);
}

void agrees(const ByHand& hand) {
  const Plan plan = planned(hand.footprint);
  const LayersPlan& layers = plan.layers;
  const auto near = [](double v) { return Approx(v).epsilon(0.005); };
  CHECK(plan.footprint_area.v == near(hand.area));
  CHECK(plan.footprint_perimeter.v == near(hand.around * 1000));
  CHECK(plan.mass.empty.v == near(hand.empty));
  CHECK(layers.drainage->volume.v == near(hand.drainage));
  CHECK(layers.drainage->voids.v == near(hand.voids));
  CHECK(layers.drainage->dry->low.v == near(hand.drainage_dry));
  CHECK(layers.substrate.volume.v == near(hand.substrate));
  CHECK(layers.substrate.buy.v == near(hand.buy));
  CHECK(layers.substrate.dry.low.v == near(hand.substrate_dry));
  CHECK(layers.separator->cut_width.v == near(hand.cut_width));
  CHECK(layers.separator->cut_depth.v == near(hand.cut_depth));
  CHECK(plan.mass.dry.low.v == near(hand.dry));
  CHECK(plan.mass.wet.high.v == near(hand.wet));
}

}  // namespace

// Everywhere:
// - Tank: floor and walls 60 cm high of 5 mm glass, 2,500 kg/m3, so 12.5 kg to the square metre:
//   12.5 x (floor + 0.6 x the way around).
// - Drainage: 5 cm deep; 40 % of it voids; a litre weighs 0.6 kg.
// - Substrate: 5 cm at the front of the box, 8 cm at its back, so at the centroid's share s of the
//   way back 5 + 3 s cm. Bought x 1.12 x 1.10 = 1.232. Three parts of 100 and one of 300 kg/m3: a
//   litre weighs 0.15 kg.
// - Separator: the box and 2 x 3 cm; a square metre weighs 0.1 kg.
// - Wet: a litre of drainage holds 0.10 L. Of substrate, which is placed with 0.15 L of water, it
//   holds (3 x 0.20 + 0.40) / 4 = 0.25 L, and a tenth of the 0.10 L that it lacks runs through and
//   stands, so 0.26 L; water at 20 degrees Celsius weighs 0.998 kg.

TEST_CASE("a rectangle, by hand") {
  // 9.0 x 4.5 dm = 40.5 dm2; around 2 x (90 + 45) = 270 cm; 12.5 x (0.405 + 1.62) = 25.31 kg.
  // Drainage 40.5 x 0.5 = 20.25 L; voids 8.10 L; 12.15 kg.
  // Centroid half way back: 0.65 dm x 40.5 = 26.325 L; x 1.232 = 32.43 L; 3.949 kg.
  // Separator 96 x 51 cm, 0.049 kg. Dry 25.31 + 12.15 + 3.949 + 0.049 = 41.46 kg.
  // Water 2.025 + 6.845 = 8.870 L, 8.853 kg; wet 50.31 kg.
  agrees({"shape: rectangle, width: 90 cm, depth: 45 cm", 0.405, 2.70, 25.31, 20.25, 8.10, 12.15,
          26.325, 32.43, 3.949, 960, 510, 41.46, 50.31});
}

TEST_CASE("a bow-front, by hand") {
  // Chord c = 60, bulge h = 9 cm: radius c^2/8h + h/2 = 50 + 4.5 = 54.5 cm; half angle
  // asin(30/54.5) = 0.58293 rad; segment r^2 (a - sin a cos a) = 2970.25 (0.58293 - 0.55046 x
  // 0.83486) = 2970.25 x 0.12337 = 366.4 cm2. Box 60 x 40 = 2400 cm2; in all 2766.4 cm2.
  // Around: the arc 2 x 54.5 x 0.58293 = 63.54, the sides 40 and 40, the back 60: 203.5 cm;
  // 12.5 x (0.27664 + 1.2212) = 18.72 kg.
  // Drainage 13.83 L; voids 5.533 L; 8.299 kg.
  // Centroid of the segment from its circle's centre: c^3/12A = 216000/4396.8 = 49.13 cm; the
  // chord lies 54.5 - 9 = 45.5 cm from it, so 3.63 cm in front of the chord.
  // From the front of the box (9 cm before the chord): (2400 x 29 + 366.4 x 5.37) / 2766.4 =
  // 25.87 cm of 49 cm: s = 0.5280. Substrate 6.584 cm x 2766.4 = 18.21 L; x 1.232 = 22.44 L;
  // 2.732 kg.
  // Separator 66 x 55 cm, 0.036 kg. Dry 18.72 + 8.299 + 2.732 + 0.036 = 29.79 kg.
  // Water 1.383 + 4.735 = 6.118 L, 6.106 kg; wet 35.90 kg.
  agrees({"shape: bow-front, width: 60 cm, depth: 40 cm, bulge: 9 cm", 0.27664, 2.035, 18.72,
          13.832, 5.533, 8.299, 18.21, 22.44, 2.732, 660, 550, 29.79, 35.90});
}

TEST_CASE("a corner, by hand") {
  // 60 x 60 less a triangle of 30 x 30 / 2 at the front right: 3600 - 450 = 3150 cm2. Around
  // 240 - 60 + 30 x 1.41421 = 222.4 cm; 12.5 x (0.315 + 1.3346) = 20.62 kg.
  // Drainage 15.75 L; voids 6.30 L; 9.45 kg.
  // The triangle's centroid lies 10 cm from the front: (3600 x 30 - 450 x 10) / 3150 = 32.86 cm of
  // 60: s = 0.5476. Substrate 6.643 cm x 3150 = 20.925 L; x 1.232 = 25.78 L; 3.139 kg.
  // Separator 66 x 66 cm, 0.044 kg. Dry 20.62 + 9.45 + 3.139 + 0.044 = 33.25 kg.
  // Water 1.575 + 5.441 = 7.016 L, 7.002 kg; wet 40.25 kg.
  agrees({"shape: corner, width: 60 cm, cut: 30 cm", 0.315, 2.224, 20.62, 15.75, 6.30, 9.45, 20.925,
          25.78, 3.139, 660, 660, 33.25, 40.25});
}

TEST_CASE("a hexagon, by hand") {
  // 50 cm across flats: 0.8660 x 2500 = 2165 cm2, flats front and back, so the box is 50 cm deep
  // and 50 / 0.8660 = 57.74 cm wide. Six sides of 57.74 / 2 = 28.87 cm: 173.2 cm around;
  // 12.5 x (0.2165 + 1.0392) = 15.70 kg.
  // Drainage 10.825 L; voids 4.33 L; 6.495 kg.
  // Half way back: 6.5 cm x 2165 = 14.07 L; x 1.232 = 17.34 L; 2.111 kg.
  // Separator 63.74 x 56 cm, 0.036 kg. Dry 15.70 + 6.495 + 2.111 + 0.036 = 24.34 kg.
  // Water 1.083 + 3.658 = 4.741 L, 4.731 kg; wet 29.07 kg.
  agrees({"shape: hexagon, width: 50 cm", 0.2165, 1.732, 15.70, 10.825, 4.33, 6.495, 14.07, 17.34,
          2.111, 637.4, 560, 24.34, 29.07});
}

TEST_CASE("a round one, by hand") {
  // 3.14159 / 4 x 50^2 = 1963.5 cm2; around 3.14159 x 50 = 157.1 cm;
  // 12.5 x (0.19635 + 0.9425) = 14.24 kg.
  // Drainage 9.8175 L; voids 3.927 L; 5.891 kg.
  // Half way back: 6.5 cm x 1963.5 = 12.763 L; x 1.232 = 15.72 L; 1.914 kg.
  // Separator 56 x 56 cm, 0.031 kg. Dry 14.24 + 5.891 + 1.914 + 0.031 = 22.08 kg.
  // Water 0.982 + 3.318 = 4.300 L, 4.291 kg; wet 26.37 kg.
  agrees({"shape: round, width: 50 cm", 0.19635, 1.571, 14.24, 9.8175, 3.927, 5.891, 12.763, 15.72,
          1.914, 560, 560, 22.08, 26.37});
}

TEST_CASE("an outline, by hand") {
  // (0,0) (80,0) (80,30) (40,50) (0,30) cm: a box of 80 x 30 = 2400 cm2 and a triangle of base 80
  // and height 20, 800 cm2, on its back: 3200 cm2. Around 80 + 30 + 30 + 2 x 44.72 (the root of
  // 40^2 + 20^2) = 229.4 cm; 12.5 x (0.32 + 1.3766) = 21.21 kg.
  // Drainage 16.0 L; voids 6.40 L; 9.60 kg.
  // Centroids 15 and 36.67 cm from the front: (2400 x 15 + 800 x 36.67) / 3200 = 20.42 cm of 50:
  // s = 0.4083. Substrate 6.225 cm x 3200 = 19.92 L; x 1.232 = 24.54 L; 2.988 kg.
  // Separator 86 x 56 cm, 0.048 kg. Dry 21.21 + 9.60 + 2.988 + 0.048 = 33.85 kg.
  // Water 1.600 + 5.179 = 6.779 L, 6.765 kg; wet 40.61 kg.
  agrees(
      {"shape: outline, points: [[0 cm, 0 cm], [80 cm, 0 cm], [80 cm, 30 cm], [40 cm, 50 cm], "
       "[0 cm, 30 cm]]",
       0.32, 2.294, 21.21, 16.0, 6.40, 9.60, 19.92, 24.54, 2.988, 860, 560, 33.85, 40.61});
}
