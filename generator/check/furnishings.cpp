#include <algorithm>
#include <numbers>

#include "check/checking.h"
#include "check/defaults.h"
#include "check/position.h"

namespace loamsheet {
namespace {

std::string quoted(const Node& n) {
  return "'" + n.text("id").value_or("") + "'";
}

// The floor that a thing takes up; zero when its size is not stated.
SquareMetres base_of(const Node& n) {
  const double width = n.number("width").value_or(n.number("length").value_or(0));
  const double diameter = n.number("diameter").value_or(0);
  const double depth = n.number("depth").value_or(0);
  const auto kind = n.text("kind");
  if (kind == "tube" && diameter > 0) return {width * diameter / 1e6};
  if (diameter > 0) return {std::numbers::pi / 4 * diameter * diameter / 1e6};
  return {width * depth / 1e6};
}

Millimetres height_of(const Node& n) {
  if (const auto height = n.number("height")) return {*height};
  if (n.text("kind") == "tube") return {n.number("diameter").value_or(0)};
  if (n.text("kind") == "water-bowl") return {n.number("depth").value_or(0)};
  return {};
}

bool stands(const Node& n) {
  // A basking spot is a place rather than a thing.
  static const std::string always_fixed[] = {"branch", "ledge", "feeding-ledge", "basking-spot"};
  const auto kind = n.text("kind").value_or("");
  const bool fixed_kind =
      std::find(std::begin(always_fixed), std::end(always_fixed), kind) != std::end(always_fixed);
  return n.has("stands_on") || !(fixed_kind || n.has("fixed_by"));
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
  s.kind = n.text("kind").value_or("");
  s.tube = s.kind == "tube";
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

Position position_of(const Node& n, std::string_view key) {
  const Node* at = n.find(key);
  if (!at) return {};
  return {at->number("[0]").value_or(0), at->number("[1]").value_or(0),
          at->number("[2]").value_or(0)};
}

Furnishing shape_of(const Node& n) {
  const auto length = [&](std::string_view key) { return Millimetres{n.number(key).value_or(0)}; };
  Furnishing f;
  f.id = n.text("id").value_or("");
  f.kind = n.text("kind").value_or("");
  f.at = position_of(n, "at"), f.from = position_of(n, "from"), f.to = position_of(n, "to");
  f.width = n.has("width") ? length("width") : length("length");
  f.depth = length("depth"), f.height = length("height"), f.diameter = length("diameter");
  f.turned = n.number("turned").value_or(0);
  f.pocket = {n.number("pocket").value_or(0)};
  f.stands = stands(n);
  f.fixed_by = n.text("fixed_by").value_or("");
  if (const auto kg = n.number("mass")) f.mass = Kilograms{*kg};
  f.where = n.where;
  return f;
}

}  // namespace

void check_furnishings(Checking& c) {
  const Node* list = c.root.find("furnishings");
  if (!list) return;
  for (const Node& n : list->items) {
    for (const char* key : {"at", "from", "to"}) check_position(c, n, key, quoted(n));
    c.build.furnishings.push_back(shape_of(n));
    if (stands(n)) take_standing(c, n);
  }
}

}  // namespace loamsheet
