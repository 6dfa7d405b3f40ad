#include <numbers>

#include "check/checking.h"
#include "check/defaults.h"
#include "check/position.h"
#include "check/taking.h"

namespace loamsheet {
namespace {

std::string quoted(const Node& n) {
  return "'" + n.text("id").value_or("") + "'";
}

OneOf<FurnishingKind> kind_of(const Node& n) {
  return n.text("kind").value_or("");
}

// The floor that a thing takes up; zero when its size is not stated.
SquareMetres base_of(const Node& n) {
  const double width = n.number("width").value_or(n.number("length").value_or(0));
  const double diameter = n.number("diameter").value_or(0);
  const double depth = n.number("depth").value_or(0);
  const bool lying = kind_of(n)->footprint == FurnishingKind::Footprint::lying;
  if (lying && diameter > 0) return {width * diameter / 1e6};
  if (diameter > 0) return {std::numbers::pi / 4 * diameter * diameter / 1e6};
  return {width * depth / 1e6};
}

Millimetres height_of(const Node& n) {
  if (const auto height = n.number("height")) return {*height};
  switch (kind_of(n)->height) {
    case FurnishingKind::Height::diameter:
      return {n.number("diameter").value_or(0)};
    case FurnishingKind::Height::depth:
      return {n.number("depth").value_or(0)};
    case FurnishingKind::Height::unknown:
      break;
  }
  return {};
}

bool stands(const Node& n) {
  return n.has("stands_on") || (kind_of(n)->stands && !n.has("fixed_by"));
}

void take_standing(Checking& c, const Node& n) {
  Standing s;
  s.id = n.text("id").value_or("");
  s.at = {n.number("at[0]").value_or(0), n.number("at[1]").value_or(0)};
  s.base = base_of(n);
  s.height = height_of(n);
  s.where = n.where;
  if (const auto kg = n.number("mass")) s.mass = Kilograms{*kg};
  const auto stated = n.text("stands_on");
  s.on_base = stated == "base";
  s.kind = kind_of(n);
  s.filled = n.yes("filled").value_or(false);
  if (!stated) {
    c.build.assumed.push_back({n.path + ".stands_on", "substrate", from_default, s.id});
  }
  if (s.on_base && (s.base.v <= 0 || s.height.v <= 0)) {
    c.error(n.where, quoted(n) + " stands on the base, but its size is not stated",
            "width, depth and height, or diameter and height",
            "what stands on the base takes room away from the layers");
  }
  c.build.standing.push_back(std::move(s));
}

Furnishing furnishing_of(const Node& n) {
  auto thing = taken_from<Furnishing>(n);
  thing.stands = stands(n);
  return thing;
}

}  // namespace

void check_furnishings(Checking& c) {
  const Node* list = c.root.find("furnishings");
  if (!list) return;
  for (const Node& n : list->items) {
    for (const char* key : {"at", "from", "to"}) check_position(c, n, key, quoted(n));
    c.build.furnishings.push_back(furnishing_of(n));
    if (stands(n)) take_standing(c, n);
  }
}

}  // namespace loamsheet
