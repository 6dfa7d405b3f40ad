// The fields of the tank: its walls and openings, and what fills it.
#include "base/fields.h"
#include "check/build.h"

namespace loamsheet {
namespace {

const char* name_of(Opening::Where side) {
  switch (side) {
    case Opening::Where::top:
      return "top";
    case Opening::Where::front:
      return "front";
    case Opening::Where::back:
      return "back";
    case Opening::Where::left:
      return "left";
    case Opening::Where::right:
      return "right";
  }
  return "";
}

void corners(const Region& footprint, FieldSink& to) {
  to.each("corners", footprint.corners, [&](const Vertex& corner) {
    to.add_all("at", unit::place_mm, {corner.at.x, corner.at.y});
    if (corner.bulge != 0) to.add("bulge", corner.bulge);
  });
}

}  // namespace

void fields(const Opening& opening, FieldSink& to) {
  to.add("name", opening.name);
  to.add("where", name_of(opening.at));
  to.add("kind", opening.kind->id);
  to.add("mesh", opening.mesh);
  to.add("at", unit::mm, opening.lower_edge);
  to.add("gap", unit::mm, opening.gap);
  to.add("gross", unit::m2, opening.gross);
  to.add("free", unit::m2, opening.free);
}

void fields(const Background& background, FieldSink& to) {
  to.add("material", background.material);
  to.add("thickness", unit::mm, background.thickness);
  to.add("fixed_by", background.fixed_by->id);
  to.add("density", unit::kg_m3, background.density);
}

void fields(const Walls& walls, FieldSink& to) {
  to.add("material", walls.material->id);
  to.add("thickness", unit::mm, walls.thickness);
  to.add("density", unit::kg_m3, walls.density);
  to.add("toughened_base", walls.toughened_base);
}

void fields(const Enclosure& tank, FieldSink& to) {
  to.add_all("inside", unit::mm, {tank.width, tank.depth, tank.height});
  to.add("sill", unit::mm, tank.sill);
  to.add("empty", unit::kg, tank.stated_empty_mass);
  to.add("stand_rating", unit::kg, tank.stand_rating);
  to.add("stand_height", unit::mm, tank.stand_height);
  corners(tank.footprint, to);
  to.object("walls", tank.walls);
  to.list("openings", tank.openings);
  to.object("background", tank.background);
}

void fields(const Bulk& bulk, FieldSink& to) {
  to.add("material", bulk.material);
  to.add("dry_density", unit::kg_m3, bulk.dry_density);
  to.add("voids", unit::pct, bulk.voids);
  to.add("field_capacity", unit::pct, bulk.field_capacity);
  to.add("moisture", unit::pct, bulk.moisture_as_placed.range);
  if (bulk.moisture_as_placed.unknown >= 0) to.add("unknown", bulk.moisture_as_placed.unknown);
}

void fields(const DrainageLayer& layer, FieldSink& to) {
  to.add("kind", layer.kind->id);
  to.add("depth", unit::mm, layer.depth);
  to.add("outlet", layer.outlet->id);
  if (layer.kind->poured) to.object("bulk", layer.bulk);
}

void fields(const SeparatorLayer& layer, FieldSink& to) {
  to.add("material", layer.material);
  to.add("turn_up", unit::mm, layer.turn_up);
  to.add("areal", unit::kg_m2, layer.areal_kg_m2);
  to.add("roll_width", unit::mm, layer.roll_width);
}

void fields(const SubstratePart& part, FieldSink& to) {
  to.add("share", unit::pct, part.share);
  fields(part.bulk, to);
}

void fields(const Terrace& terrace, FieldSink& to) {
  to.add("from", unit::mm, terrace.from);
  to.add("height", unit::mm, terrace.height);
  to.add_known("held_by", terrace.held_by);
}

void fields(const SubstrateLayer& layer, FieldSink& to) {
  to.add("mix", layer.mix);
  to.add_known("placed", layer.placed);
  to.add("front", unit::mm, layer.front);
  to.add("back", unit::mm, layer.back);
  to.add("settling", unit::pct, layer.settling);
  to.add("hold_back", unit::pct, layer.hold_back);
  to.list("terraces", layer.terraces);
  to.list("parts", layer.parts);
}

void fields(const LitterLayer& layer, FieldSink& to) {
  to.add("depth", unit::mm, layer.depth);
  fields(layer.bulk, to);
}

void fields(const MossLayer& layer, FieldSink& to) {
  to.add("depth", unit::mm, layer.depth);
  to.add("floor", unit::pct, layer.floor);
  to.add("area", unit::m2, layer.area);
  fields(layer.bulk, to);
}

void fields(const WaterArea& area, FieldSink& to) {
  to.add("side", area.side == WaterArea::Side::left ? "left" : "right");
  to.add("floor", unit::pct, area.floor);
  to.add("depth", unit::mm, area.depth);
  to.add("filter", area.filter);
  to.add("dam", area.dam.material);
  to.add("dam_thickness", unit::mm, area.dam.thickness);
}

void fields(const Layers& layers, FieldSink& to) {
  to.object("drainage", layers.drainage);
  to.object("separator", layers.separator);
  to.object("substrate", layers.substrate);
  to.object("litter", layers.litter);
  to.object("moss", layers.moss);
  to.add("drainage_hold_back", unit::pct, layers.drainage_hold_back);
  to.add("litter_hold_back", unit::pct, layers.litter_hold_back);
}

void fields(const Standing& thing, FieldSink& to) {
  to.add("id", thing.id);
  to.add_all("at", unit::place_mm, {thing.at.x, thing.at.y});
  to.add("base", unit::m2, thing.base);
  to.add("height", unit::mm, thing.height);
  to.add("mass", unit::kg, thing.mass);
  to.add("on_base", thing.on_base);
}

}  // namespace loamsheet
