#include "base/text.h"
#include "check/check.h"

namespace loamsheet {
namespace {

std::string number(double v) {
  return significant(v, 9);
}

std::string ends(double low, double high) {
  return low == high ? number(low) : number(low) + ".." + number(high);
}

template <class U>
std::string ends(const Range<Amount<U>>& r) {
  return ends(r.low.v, r.high.v);
}

std::string line(std::string_view name, std::string_view value) {
  return std::string(name) + ' ' + std::string(value) + '\n';
}

std::string_view name_of(BuildKind kind) {
  switch (kind) {
    case BuildKind::humid:
      return "humid";
    case BuildKind::temperate:
      return "temperate";
    case BuildKind::arid:
      return "arid";
    case BuildKind::burrowing:
      return "burrowing";
    case BuildKind::semi_aquatic:
      return "semi-aquatic";
  }
  return "";
}

std::string_view name_of(Opening::Where side) {
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

std::string of(const Identity& id, const Print& print) {
  std::string out = line("title", id.title) + line("reference", id.reference + '-' + id.revision) +
                    line("plant-on", iso(id.plant_on)) + line("moved", id.moved ? "yes" : "no");
  if (id.moves_on) out += line("moves-on", iso(*id.moves_on));
  if (!id.prepared_by.empty()) out += line("prepared-by", id.prepared_by);
  if (!id.customer.empty()) out += line("customer", id.customer);
  return out + line("print", print.paper + ' ' + (print.us_units ? "us " : "metric ") +
                                 print.language + (print.large ? " large" : " normal"));
}

std::string of(const Opening& o) {
  std::string out = "opening " + o.name + ' ' + std::string(name_of(o.at)) +
                    (o.kind->swings ? " door" : "") + (o.mesh ? " mesh" : "");
  if (o.lower_edge) out += " at " + number(o.lower_edge->v) + " mm";
  if (o.gap) out += " gap " + number(o.gap->v) + " mm";
  return out + " gross " + number(o.gross.v) + " free " + number(o.free.v) + " m2\n";
}

std::string of(const Enclosure& e) {
  std::string out = "footprint";
  for (const Vertex& v : e.footprint.corners) {
    out += " (" + number(v.at.x) + ' ' + number(v.at.y) +
           (v.bulge == 0 ? "" : " bulge " + number(v.bulge)) + ')';
  }
  out += '\n' + line("inside", number(e.width.v) + " x " + number(e.depth.v) + " x " +
                                   number(e.height.v) + " mm");
  out += line("walls", std::string(e.walls.material->id) + ' ' + number(e.walls.thickness.v) +
                           " mm " + number(e.walls.density.v) + " kg/m3" +
                           (e.walls.toughened_base ? " toughened" : ""));
  out += line("sill", number(e.sill.v) + " mm");
  for (const Opening& o : e.openings) out += of(o);
  if (e.background) {
    out += line("background", e.background->material + ' ' + number(e.background->thickness.v));
  }
  if (e.stated_empty_mass) out += line("empty", number(e.stated_empty_mass->v) + " kg");
  if (e.stand_rating) out += line("stand", number(e.stand_rating->v) + " kg");
  return out;
}

std::string of(const Bulk& b) {
  std::string out = b.material + " density " + ends(b.dry_density) + " voids " + number(b.voids.v) +
                    " field-capacity " + number(b.field_capacity.v) + " moisture " +
                    ends(b.moisture_as_placed.range);
  if (b.moisture_as_placed.unknown >= 0) {
    out += " unknown " + std::to_string(b.moisture_as_placed.unknown);
  }
  return out;
}

std::string of(const Layers& l) {
  std::string out = "drainage " + std::string(l.drainage.kind->id) + ' ' +
                    number(l.drainage.depth.v) + " mm outlet " +
                    std::string(l.drainage.outlet->id) + '\n';
  if (l.drainage.kind->poured) out += "  " + of(l.drainage.bulk) + '\n';
  if (l.separator) {
    out += "separator " + l.separator->material + " turn-up " + number(l.separator->turn_up.v) +
           " mm " + number(l.separator->areal_kg_m2) + " kg/m2\n";
  }
  const SubstrateLayer& s = l.substrate;
  out += "substrate " + s.mix + " front " + number(s.front.v) + " back " + number(s.back.v) +
         " mm settling " + number(s.settling.v) + " hold-back " + number(s.hold_back.v) + '\n';
  for (const Terrace& t : s.terraces) {
    out += "  from " + number(t.from.v) + " depth " + number(t.height.v) + " mm held by '" +
           t.held_by + "'\n";
  }
  for (const auto& part : s.parts) out += "  " + number(part.share.v) + ' ' + of(part.bulk) + '\n';
  if (l.litter) {
    out += "litter " + number(l.litter->depth.v) + " mm\n  " + of(l.litter->bulk) + '\n';
  }
  if (l.moss) {
    const std::string cover =
        l.moss->floor ? number(l.moss->floor->v) + " of the land" : number(l.moss->area->v) + " m2";
    out += "moss " + number(l.moss->depth.v) + " mm on " + cover + "\n  " + of(l.moss->bulk) + '\n';
  }
  return out;
}

std::string of(const Standing& s) {
  std::string out = "standing " + s.id + " at " + number(s.at.x) + ' ' + number(s.at.y) + " base " +
                    number(s.base.v) + " m2 height " + number(s.height.v) + " mm";
  if (s.mass) out += " mass " + number(s.mass->v) + " kg";
  return out + (s.on_base ? " on base\n" : "\n");
}

std::string of(const UnknownInput& u) {
  return "unknown " + u.key + ' ' + u.shown + " from " + u.from + '\n';
}

}  // namespace

std::string dump(const Build& b) {
  std::string out = "build v1\n" + of(b.identity, b.print) + of(b.enclosure) + of(b.layers);
  if (b.water_area) {
    out += "water-area " +
           std::string(b.water_area->side == WaterArea::Side::left ? "left" : "right") + ' ' +
           number(b.water_area->floor.v) + " of the floor " + number(b.water_area->depth.v) +
           " mm, dam " + b.water_area->dam.material + ' ' + number(b.water_area->dam.thickness.v) +
           " mm\n";
  }
  for (const auto& s : b.standing) out += of(s);
  out += line("kind", name_of(b.kind));
  for (const auto& a : b.kept) out += "animal " + std::to_string(a.count) + ' ' + a.facts.id + '\n';
  for (const auto& h : b.hazardous)
    out += line("hazardous", h.use + ' ' + h.material + ' ' + h.hazard.kind);
  for (const auto& u : b.unknowns) out += of(u);
  for (const auto& a : b.assumed)
    out += "assumed " + a.key + ' ' + a.value + " from " + a.from + '\n';
  return out;
}

}  // namespace loamsheet
