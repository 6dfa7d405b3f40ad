#include "examples.h"

#include <algorithm>

#include "base/text.h"

namespace loamsheet::examples {
namespace {

Opening opening(std::string name, Opening::Where at) {
  Opening o;
  o.name = std::move(name);
  o.at = at;
  return o;
}

Opening vent(std::string name, Opening::Where at, double lower_edge, double cm2) {
  Opening o = opening(std::move(name), at);
  o.lower_edge = Millimetres{lower_edge};
  o.gross = {cm2 / 1e4};
  o.mesh = true;
  return o;
}

Opening doors(double lower_edge) {
  Opening o = opening("doors", Opening::Where::front);
  o.lower_edge = Millimetres{lower_edge};
  o.kind = "door";
  return o;
}

SubstratePart part(std::string material, double share) {
  SubstratePart p;
  p.bulk.material = std::move(material);
  p.share = {share};
  return p;
}

Enclosure tank(const Size& size, double wall) {
  Enclosure e;
  e.footprint = rectangle(size.width, size.depth);
  e.width = size.width, e.depth = size.depth, e.height = size.height;
  e.walls.material = "glass";
  e.walls.thickness = Millimetres{wall};
  return e;
}

}  // namespace

void settle(Example& x) {
  const Layers& l = x.build.layers;
  Profile& p = x.plan.layers.profile;
  p.drainage_top = l.drainage.kind->keeps_water_off ? l.drainage.depth : 0_mm;
  const Millimetres litter = l.litter ? l.litter->depth : 0_mm;
  p.substrate_front = p.drainage_top + l.substrate.front;
  p.substrate_back = p.drainage_top + l.substrate.back;
  p.litter_front = p.substrate_front + litter;
  p.litter_back = p.substrate_back + litter;
  p.highest = std::max(p.litter_front, p.litter_back);
}

Example humid(const Size& size) {
  Example x;
  Enclosure& e = x.build.enclosure = tank(size, 5);
  Opening lid = opening("lid", Opening::Where::top);
  lid.mesh = true;
  lid.over = Box{0, size.depth.v * 0.45, size.width.v, size.depth.v};
  e.openings = {lid, vent("slot", Opening::Where::front, size.height.v * 0.25, 60),
                doors(size.height.v * 0.3)};
  e.background = Background{"cork-bark", 30_mm};
  Layers& l = x.build.layers;
  l.drainage.kind = "granules";
  l.drainage.bulk.material = "expanded-clay";
  l.drainage.depth = 50_mm;
  l.separator = SeparatorLayer{"fibreglass-mesh", 30_mm, 0};
  l.substrate.mix = "woodland";
  l.substrate.parts = {part("tree-fern-fibre", 0.6), part("orchid-bark", 0.4)};
  l.substrate.front = 50_mm, l.substrate.back = 80_mm;
  l.litter = LitterLayer{};
  l.litter->bulk.material = "oak-leaves";
  l.litter->depth = 10_mm;
  x.plan.water.standing = {12_mm, 18_mm};
  x.plan.water.highest_standing = 30_mm;
  settle(x);
  return x;
}

Example arid(const Size& size) {
  Example x;
  Enclosure& e = x.build.enclosure = tank(size, 6);
  Opening top = opening("top", Opening::Where::top);
  top.mesh = true;
  e.openings = {top, vent("left vent", Opening::Where::left, size.height.v * 0.5, 90),
                vent("right vent", Opening::Where::right, size.height.v * 0.55, 90)};
  Layers& l = x.build.layers;
  l.substrate.mix = "arid-sand";
  l.substrate.parts = {part("sand", 0.8), part("clay-powder", 0.2)};
  l.substrate.front = {std::min(180.0, 0.3 * size.height.v)};
  l.substrate.back = {std::min(250.0, 0.42 * size.height.v)};
  settle(x);
  return x;
}

void reshape(Example& x, OneOf<FloorShape> shape, Region footprint) {
  const Box box = extent(footprint);
  x.build.enclosure.shape = shape;
  x.build.enclosure.width = {box.width()};
  x.build.enclosure.depth = {box.height()};
  x.build.enclosure.footprint = std::move(footprint);
}

Wording words(UnitSystem units) {
  const auto world = real_world();
  std::map<std::string, std::string> sentences;
  for (const char* file : {"figure", "material", "units"}) {
    const std::string path = std::string(LOAMSHEET_SOURCE "/templates/en/") + file + ".yaml";
    for (const std::string& row : split(world->read(path).value_or(""), '\n')) {
      const size_t colon = row.find(": \"");
      if (colon == std::string::npos || row[0] == '#') continue;
      sentences[row.substr(0, colon)] = row.substr(colon + 3, row.rfind('"') - colon - 3);
    }
  }
  return {std::move(sentences), units};
}

const Typefaces& faces() {
  static const Typefaces loaded = std::move(load_typefaces(*real_world()).value.value());
  return loaded;
}

}  // namespace loamsheet::examples
