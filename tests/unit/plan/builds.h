// builds: a build made by hand that the tests change one thing at a time.
#pragma once
#include <string>
#include <utility>

#include "check/build.h"

namespace loamsheet::tests {

inline Bulk bulk(const std::string& material, double density, double field_capacity,
                 double moisture) {
  Bulk bulk;
  bulk.material = material;
  bulk.dry_density = {{density}, {density}};
  bulk.voids = {0.45};
  bulk.field_capacity = {field_capacity};
  bulk.moisture_as_placed.range = {{moisture}, {moisture}};
  return bulk;
}

inline Span place(int line, int column) {
  return {"box.yaml", line, column, 4};
}

inline Opening opening(const std::string& name, Opening::Where wall, Millimetres lower_edge) {
  Opening opening;
  opening.name = name;
  opening.at = wall;
  opening.lower_edge = lower_edge;
  opening.where = place(20, 7);
  return opening;
}

// A block on the base with so much base area, that does not count as loose stone; it has a mass.
inline Standing block(Point at, SquareMetres base, Millimetres height) {
  Standing thing;
  thing.id = "block", thing.kind = "hide";
  thing.at = at, thing.base = base, thing.height = height;
  thing.mass = 2_kg;
  thing.on_base = true;
  return thing;
}

inline Enclosure box_enclosure() {
  Enclosure tank;
  tank.footprint = rectangle(900_mm, 450_mm);
  tank.width = 900_mm, tank.depth = 450_mm, tank.height = 600_mm, tank.sill = 180_mm;
  tank.walls.material = "glass";
  tank.walls.thickness = 5_mm;
  tank.walls.density = {2500};
  tank.walls.toughened_base = true;
  tank.openings.push_back(opening("doors", Opening::Where::front, 180_mm));
  tank.stand_rating = 150_kg;
  return tank;
}

inline SubstrateLayer box_substrate() {
  SubstrateLayer layer;
  layer.mix = "woodland";
  layer.parts = {{bulk("tree-fern-fibre", 100, 0.25, 0.15), {0.75}},
                 {bulk("orchid-bark", 200, 0.20, 0.10), {0.25}}};
  layer.front = 50_mm, layer.back = 80_mm;
  layer.settling = {0.12}, layer.hold_back = {0.10};
  layer.front_at = place(32, 40), layer.back_at = place(32, 52);
  return layer;
}

inline Layers box_layers() {
  Layers layers;
  layers.drainage.kind = "granules";
  layers.drainage.bulk = bulk("expanded-clay", 670, 0.11, 0.02);
  layers.drainage.depth = 50_mm;
  layers.drainage.outlet = "siphon-tube";
  layers.drainage.depth_at = place(30, 20);
  layers.separator = SeparatorLayer{"fibreglass-mesh", 30_mm, 0.1};
  layers.substrate = box_substrate();
  layers.litter = LitterLayer{bulk("oak-leaves", 60, 0.30, 0.10), 10_mm};
  layers.drainage_hold_back = {0.05};
  layers.litter_hold_back = {0.10};
  return layers;
}

// A glass box, 900 x 450 x 600 mm inside: 50 mm of expanded clay, 50 to 80 mm of a mix of two
// parts, 10 mm of leaves; one door with its lower edge at 180 mm.
inline Build box_build() {
  Build build;
  build.spec_file = "box.yaml";
  build.identity.title = "Fern ravine";
  build.identity.reference = "TT-0142";
  build.identity.revision = "A";
  build.identity.plant_on = *parse_date("2026-03-07");
  build.enclosure = box_enclosure();
  build.layers = box_layers();
  return build;
}

// The moisture of the first part of the mix, unknown between two ends.
inline Build with_unknown_moisture(Build build, double low, double high) {
  const int unknown = static_cast<int>(build.unknowns.size());
  build.layers.substrate.parts[0].bulk.moisture_as_placed = {{{low}, {high}}, unknown};
  build.unknowns.push_back({"layers.substrate.placed", place(32, 90), "catalogue", "dry–damp"});
  return build;
}

}  // namespace loamsheet::tests
