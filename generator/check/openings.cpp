#include <algorithm>
#include <cmath>
#include <map>

#include "check/checking.h"
#include "check/defaults.h"
#include "read/unit.h"

namespace loamsheet {
namespace {

constexpr double slack = 1e-6;  // mm and m2: what arithmetic may leave

std::string area_text(SquareMetres m2) {
  return quantity_text(Kind::area, m2.v);
}

std::string quoted(const Opening& o) {
  return "'" + o.name + "'";
}

Opening::Where side_of(const Node& n) {
  static const std::map<std::string, Opening::Where> sides{{"top", Opening::Where::top},
                                                           {"front", Opening::Where::front},
                                                           {"back", Opening::Where::back},
                                                           {"left", Opening::Where::left},
                                                           {"right", Opening::Where::right}};
  return sides.at(n.text("where").value_or("top"));
}

std::optional<Box> covered(const Node& n) {
  if (!n.has("over")) return std::nullopt;
  Box box;
  for (const char* corner : {"over[0]", "over[1]"}) {
    const std::string at(corner);
    box.add(Point{n.number(at + "[0]").value_or(0), n.number(at + "[1]").value_or(0)});
  }
  return box;
}

SquareMetres area_of(const Box& box) {
  return {box.width() * box.height() / 1e6};
}

void check_over(Checking& c, const Node& n, const Opening& o) {
  if (!o.over) return;
  if (area_of(*o.over).v <= 0) {
    c.error(place_of(n, "over"), "opening " + quoted(o) + " covers nothing",
            "two opposite corners, such as [[0 cm, 20 cm], [90 cm, 45 cm]]");
  }
  if (c.build.enclosure.footprint.corners.empty()) return;
  const Box inside = extent(c.build.enclosure.footprint);
  const bool fits = inside.contains({o.over->left, o.over->bottom}, slack) &&
                    inside.contains({o.over->right, o.over->top}, slack);
  if (fits) return;
  c.error(place_of(n, "over"), "opening " + quoted(o) + " reaches beyond the tank",
          "corners from " + length_text({inside.left}) + ", " + length_text({inside.bottom}) +
              " to " + length_text({inside.right}) + ", " + length_text({inside.top}));
}

// The gross area of a vent.
SquareMetres vent_area(Checking& c, const Node& n, const Opening& o) {
  const auto stated = n.number("area");
  if (!stated && !o.over) {
    c.error(n.where, "opening " + quoted(o) + " has no size",
            o.at == Opening::Where::top ? "'over' with two corners, or 'area'" : "'area'",
            "add area: 60 cm2");
    return {};
  }
  if (!stated) return area_of(*o.over);
  const bool too_large = o.over && *stated > area_of(*o.over).v + slack;
  if (too_large) {
    const std::string most = area_text(area_of(*o.over));
    c.error({.where = n.find("area")->where,
             .message = "opening " + quoted(o) + " is larger (" + area_text({*stated}) +
                        ") than what it covers (" + most + ")",
             .expected = "at most " + most,
             .hint = "write '" + most + "', or leave 'area' out",
             .edit = Edit{n.find("area")->where, most}});
  }
  return {*stated};
}

void check_height(Checking& c, const Node& n, const Opening& o) {
  const Millimetres height = c.build.enclosure.height;
  if (!o.lower_edge || *o.lower_edge < height) return;
  c.error(n.find("at")->where,
          "opening " + quoted(o) + " starts at " + length_text(*o.lower_edge) +
              ", above the top of the tank (" + length_text(height) + ")",
          "less than " + length_text(height));
}

Opening opening_of(Checking& c, const Node& n) {
  Opening o;
  o.name = n.text("name").value_or("");
  o.at = side_of(n);
  o.kind = n.text("kind").value_or("");
  o.mesh = n.has("mesh");
  o.where = place_of(n, "at");
  if (const auto at = n.number("at")) o.lower_edge = Millimetres{*at};
  o.over = covered(n);
  check_over(c, n, o);
  check_height(c, n, o);
  if (o.kind->swings) {
    if (const auto length = n.number("length")) o.length = Millimetres{*length};
    const double mm2 = n.number("length").value_or(0) * n.number("gap").value_or(0);
    o.gross = o.free = {mm2 / 1e6};
    o.gap = Millimetres{n.number("gap").value_or(0)};
  } else {
    o.gross = vent_area(c, n, o);
    o.free = o.gross * n.number("mesh.open").value_or(1);
    if (const auto aperture = n.number("mesh.aperture")) o.gap = Millimetres{*aperture};
  }
  return o;
}

const Opening* lowest_side(const std::vector<Opening>& openings) {
  const Opening* lowest = nullptr;
  for (const Opening& o : openings) {
    if (o.lower_edge && (!lowest || *o.lower_edge < *lowest->lower_edge)) lowest = &o;
  }
  return lowest;
}

// The lower edge in the words and units in which the spec gives it.
std::string edge_as_typed(const Checking& c, const Opening& opening) {
  for (const Node& n : c.root.find("enclosure.openings")->items) {
    if (n.text("name") == opening.name) return n.find("at")->typed;
  }
  return length_text(*opening.lower_edge);
}

void check_sill(Checking& c) {
  Enclosure& e = c.build.enclosure;
  const Opening* lowest = lowest_side(e.openings);
  const auto stated = c.root.number("enclosure.sill");
  const Millimetres worked_out = lowest ? *lowest->lower_edge : e.height;
  e.sill = stated ? Millimetres{*stated} : worked_out;
  e.sill_at = stated ? place_of(c.root, "enclosure.sill") : lowest ? lowest->where : e.height_at;
  if (!stated) {
    if (lowest)
      c.build.assumed.push_back({"enclosure.sill", edge_as_typed(c, *lowest), from_default});
  } else if (e.sill > e.height) {
    c.error(e.sill_at,
            "the sill (" + length_text(e.sill) + ") is higher than the tank (" +
                length_text(e.height) + ")",
            "at most " + length_text(e.height));
  } else if (lowest && std::fabs(e.sill.v - worked_out.v) > slack) {
    c.error({.where = e.sill_at,
             .message = "the sill is " + length_text(e.sill) + ", but the lowest opening " +
                        quoted(*lowest) + " starts at " + length_text(worked_out),
             .expected = "the lower edge of the lowest side opening",
             .hint = "write '" + length_text(worked_out) + "', or leave 'sill' out",
             .edit = Edit{e.sill_at, length_text(worked_out)}});
  }
}

}  // namespace

void check_openings(Checking& c) {
  if (const Node* openings = c.root.find("enclosure.openings")) {
    for (const Node& n : openings->items) {
      c.build.enclosure.openings.push_back(opening_of(c, n));
    }
  }
  check_sill(c);
}

}  // namespace loamsheet
