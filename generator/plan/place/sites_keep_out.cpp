#include <algorithm>
#include <cmath>
#include <numbers>

#include "plan/fill/ground.h"
#include "plan/place/constants.h"
#include "plan/place/sites.h"

namespace loamsheet {
namespace {

// A place as a thing sees it that stands at `at`, turned: x along its width, y along its depth.
Point seen_from(const Furnishing& thing, Point p) {
  const double angle = thing.turned * std::numbers::pi / 180;
  const double x = p.x - thing.at.x, y = p.y - thing.at.y;
  return {x * std::cos(angle) + y * std::sin(angle), y * std::cos(angle) - x * std::sin(angle)};
}

double stated(Millimetres length) {
  return length.v > 0 ? length.v : constants::unsized_thing.v;
}

bool round_thing(const Furnishing& thing) {
  return thing.kind == "water-bowl" || (thing.diameter.v > 0 && thing.kind != "tube");
}

// The mouth of a hide or laying box is at its front, those of a tube at both ends.
bool stands_at(const Furnishing& thing, Point p) {
  const double beside = constants::beside_things.v;
  const Point seen = seen_from(thing, p);
  if (round_thing(thing)) {
    return std::hypot(seen.x, seen.y) < stated(thing.diameter) / 2 + beside;
  }
  const bool tube = thing.kind == "tube";
  const bool mouth = thing.kind == "hide" || thing.kind == "laying-box";
  const double ends = tube ? constants::mouth.v : beside;
  const double front = mouth ? constants::mouth.v : beside;
  const double depth = stated(tube ? thing.diameter : thing.depth);
  return std::abs(seen.x) < stated(thing.width) / 2 + ends && seen.y < depth / 2 + beside &&
         seen.y > -depth / 2 - front;
}

bool on_the_ground(const Furnishing& thing) {
  return thing.kind != "branch" && thing.kind != "ledge" && thing.kind != "feeding-ledge";
}

double from_wall(const Region& floor, Opening::Where wall, Point p) {
  const Box box = extent(floor);
  const auto reach = reach_at(floor, p.x);
  switch (wall) {
    case Opening::Where::front:
      return reach ? p.y - reach->low.v : 0;
    case Opening::Where::back:
      return reach ? reach->high.v - p.y : 0;
    case Opening::Where::left:
      return p.x - box.left;
    case Opening::Where::right:
      return box.right - p.x;
    case Opening::Where::top:
      break;
  }
  return box.width() + box.height();
}

// How far a place is from the middle of a wall, along it.
double from_middle(const Region& floor, Opening::Where wall, Point p) {
  const Box box = extent(floor);
  const bool side = wall == Opening::Where::left || wall == Opening::Where::right;
  return side ? std::abs(p.y - (box.bottom + box.top) / 2)
              : std::abs(p.x - (box.left + box.right) / 2);
}

// The strip that a door sweeps and a hand reaches through: as long as the door, where that is
// stated, and along its whole wall otherwise.
bool before_door(const Region& floor, const Opening& door, Point p) {
  if (!door.door || from_wall(floor, door.at, p) >= constants::door_strip.v) return false;
  return !door.length || from_middle(floor, door.at, p) < door.length->v / 2;
}

}  // namespace

bool kept_free(const Build& build, Point p) {
  const Region& floor = build.enclosure.footprint;
  const auto& openings = build.enclosure.openings;
  const auto& things = build.furnishings;
  return std::any_of(openings.begin(), openings.end(),
                     [&](const Opening& o) { return before_door(floor, o, p); }) ||
         std::any_of(things.begin(), things.end(), [&](const Furnishing& thing) {
           return on_the_ground(thing) && stands_at(thing, p);
         });
}

}  // namespace loamsheet
