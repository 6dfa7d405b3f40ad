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

double stated_or_usual(Millimetres length) {
  return length.v > 0 ? length.v : constants::unsized_thing.v;
}

bool round_thing(const Furnishing& thing) {
  using enum FurnishingKind::Footprint;
  const auto floor = thing.kind->footprint;
  return floor == disc || (floor == stated && thing.diameter.v > 0);
}

bool stands_at(const Furnishing& thing, Point p) {
  const double beside = constants::beside_things.v;
  const Point seen = seen_from(thing, p);
  if (round_thing(thing)) {
    return std::hypot(seen.x, seen.y) < stated_or_usual(thing.diameter) / 2 + beside;
  }
  const auto mouth = thing.kind->mouth;
  const bool lying = thing.kind->footprint == FurnishingKind::Footprint::lying;
  const double ends = mouth == FurnishingKind::Mouth::ends ? constants::mouth.v : beside;
  const double front = mouth == FurnishingKind::Mouth::front ? constants::mouth.v : beside;
  const double depth = stated_or_usual(lying ? thing.diameter : thing.depth);
  return std::abs(seen.x) < stated_or_usual(thing.width) / 2 + ends &&
         seen.y < depth / 2 + beside && seen.y > -depth / 2 - front;
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
  if (!door.kind->swings || from_wall(floor, door.at, p) >= constants::door_strip.v) return false;
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
           return thing.kind->on_ground() && stands_at(thing, p);
         });
}

}  // namespace loamsheet
