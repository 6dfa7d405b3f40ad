#include "laws.h"

namespace loamsheet::tests {
namespace {

Millimetres millimetres(int low, int high) {
  return {static_cast<double>(drawn(low, high))};
}

Fraction share(int low, int high) {
  return {drawn(low, high) / 100.0};
}

Bulk drawn_bulk(const std::string& material) {
  Bulk bulk;
  bulk.material = material;
  const double density = drawn(20, 1600);
  bulk.dry_density = {{density}, {density + drawn(0, 300)}};
  bulk.voids = share(10, 80);
  bulk.field_capacity = share(5, 80);
  bulk.moisture_as_placed.range.low = share(0, 40);
  bulk.moisture_as_placed.range.high = bulk.moisture_as_placed.range.low + share(0, 30);
  return bulk;
}

std::vector<SubstratePart> drawn_mix() {
  std::vector<SubstratePart> mix;
  double sum = 0;
  for (int i = drawn(1, 5); i > 0; --i) {
    mix.push_back({drawn_bulk("part-" + std::to_string(i)), {static_cast<double>(drawn(1, 8))}});
    sum += mix.back().share.v;
  }
  for (SubstratePart& part : mix) part.share.v /= sum;
  return mix;
}

Enclosure drawn_enclosure() {
  Enclosure tank;
  tank.footprint = drawn_footprint();
  tank.height = millimetres(300, 1200);
  tank.walls.thickness = millimetres(3, 12);
  tank.walls.density = {2500};
  if (drawn(0, 1) == 1) tank.background = Background{"cork-bark", millimetres(5, 60)};
  return tank;
}

Layers drawn_layers() {
  Layers layers;
  constexpr const char* kinds[] = {"none", "granules", "raised-floor"};
  layers.drainage.kind = kinds[drawn(0, 2)];
  layers.drainage.bulk = drawn_bulk("granules");
  layers.drainage.depth = millimetres(10, 120);
  layers.drainage_hold_back = share(0, 20);
  layers.separator = SeparatorLayer{"mesh", millimetres(0, 50), 0.1};
  layers.substrate.parts = drawn_mix();
  layers.substrate.front = millimetres(10, 150);
  layers.substrate.back = millimetres(10, 150);
  layers.substrate.settling = share(0, 30);
  layers.substrate.hold_back = share(0, 20);
  if (drawn(0, 1) == 1) layers.litter = LitterLayer{drawn_bulk("leaves"), millimetres(5, 40)};
  return layers;
}

}  // namespace

int drawn(int low, int high) {
  return *rc::gen::inRange(low, high + 1);
}

Region drawn_footprint() {
  const Millimetres width = millimetres(300, 1500), depth = millimetres(200, 900);
  switch (drawn(0, 5)) {
    case 0:
      return rectangle(width, depth);
    case 1:
      return bow_front(width, depth, width * (drawn(1, 50) / 100.0));
    case 2:
      return cut_corner(width, width * (drawn(1, 99) / 100.0));
    case 3:
      return hexagon(width);
    case 4:
      return circle(width);
    default:
      return polygon(
          {{0, 0}, {width.v, 0}, {width.v, depth.v / 2}, {width.v / 3, depth.v}, {0, depth.v}});
  }
}

Build drawn_build() {
  Build build;
  build.spec_file = "drawn.yaml";
  build.identity.plant_on = *parse_date("2026-03-07");
  build.kind = static_cast<BuildKind>(drawn(0, 4));
  build.enclosure = drawn_enclosure();
  build.layers = drawn_layers();
  if (drawn(0, 2) == 0) {
    build.water_area = WaterArea{drawn(0, 1) == 0 ? WaterArea::Side::left : WaterArea::Side::right,
                                 share(5, 60), millimetres(20, 200)};
  }
  return build;
}

Build with_drawn_unknowns(Build build) {
  for (SubstratePart& part : build.layers.substrate.parts) {
    auto& moisture = part.bulk.moisture_as_placed;
    moisture.range = {share(0, 30), share(30, 60)};
    moisture.unknown = static_cast<int>(build.unknowns.size());
    build.unknowns.push_back({part.bulk.material, {}, "catalogue", "dry–damp"});
  }
  return build;
}

}  // namespace loamsheet::tests
