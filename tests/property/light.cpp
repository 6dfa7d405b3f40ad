// Laws of light, over drawn lamps in a tank without a lid.
#include <cmath>

#include "laws.h"
#include "plan/light/light.h"
#include "plan/light/obstacles.h"
#include "plan/light/screen.h"

using namespace loamsheet;
using namespace loamsheet::tests;

namespace {

// Open at the top all over, so that nothing stands in the way.
Build open_tank() {
  Build build;
  Enclosure& tank = build.enclosure;
  tank.width = 900_mm, tank.depth = 450_mm, tank.height = 600_mm;
  tank.footprint = rectangle(tank.width, tank.depth);
  tank.walls.material = "glass";
  Opening top;
  top.gross = top.free = area(tank.footprint);
  tank.openings = {top};
  return build;
}

Lamp drawn_lamp(const char* kind) {
  Lamp lamp;
  lamp.kind = kind;
  lamp.at = {double(drawn(300, 600)), double(drawn(150, 300)), double(drawn(620, 900))};
  lamp.length = {double(drawn(50, 800))}, lamp.width = {double(drawn(20, 300))};
  lamp.beam = drawn(10, 120), lamp.flux = drawn(100, 9000);
  lamp.photons_per_lux = 0.015, lamp.hours = drawn(1, 24);
  return lamp;
}

Lamp drawn_lamp() {
  constexpr const char* kinds[] = {"bar", "panel", "spot"};
  return drawn_lamp(kinds[drawn(0, 2)]);
}

Position drawn_place() {
  return {double(drawn(0, 900)), double(drawn(0, 450)), double(drawn(0, 580))};
}

Furnishing drawn_stone() {
  Furnishing stone;
  stone.id = "stone", stone.kind = "stone", stone.stands = true;
  stone.at = {double(drawn(100, 800)), double(drawn(50, 400)), 0};
  stone.width = {double(drawn(10, 300))}, stone.depth = {double(drawn(10, 300))};
  stone.height = {double(drawn(10, 400))}, stone.turned = drawn(0, 180);
  return stone;
}

Furnishing drawn_branch() {
  Furnishing branch;
  branch.id = "branch", branch.kind = "branch";
  branch.from = drawn_place(), branch.to = drawn_place();
  branch.diameter = {double(drawn(5, 80))};
  return branch;
}

bool same(double a, double b) {
  return std::fabs(a - b) <= 1e-9 * std::max({1.0, std::fabs(a), std::fabs(b)});
}

// More than half a millimetre under its surface: `holds` counts what is a millimetre outside.
bool deep_in(Solid s, const Position& p) {
  for (double& half : s.half) half -= 1.5;
  s.radius -= 1.5;
  return holds(s, p);
}

// By trying points along the way.
bool passes_through(const Solid& s, const Position& a, const Position& b) {
  constexpr int steps = 400;
  for (int i = 0; i <= steps; ++i) {
    const double t = double(i) / steps;
    const Position p{a.x + (b.x - a.x) * t, a.y + (b.y - a.y) * t, a.z + (b.z - a.z) * t};
    if (deep_in(s, p)) return true;
  }
  return false;
}

// Some slopes, that of a way among them.
Box slopes_around(const Position& way) {
  const double x = way.x / way.z, y = way.y / way.z;
  return {x - drawn(1, 50) / 100.0, y - drawn(1, 50) / 100.0, x + drawn(1, 50) / 100.0,
          y + drawn(1, 50) / 100.0};
}

}  // namespace

TEST_CASE("light from a split panel equals the whole") {
  holds("split panel", [] {
    Build build = open_tank();
    build.lamps = {drawn_lamp("panel")};
    const Position at = drawn_place();
    const LightAt whole = LightField(build).at(at);
    Lamp left = build.lamps[0], right = left;
    const double share = drawn(1, 9) / 10.0, length = left.length.v;
    left.length = {length * share}, left.flux *= share;
    left.at.x -= length * (1 - share) / 2;
    right.length = {length * (1 - share)}, right.flux *= 1 - share;
    right.at.x += length * share / 2;
    build.lamps = {left, right};
    RC_ASSERT(same(LightField(build).at(at).ppfd, whole.ppfd));
    RC_ASSERT(same(LightField(build).at(at).dli, whole.dli));
  });
}

TEST_CASE("raising an unobstructed lamp never brightens the point straight below it") {
  holds("raised lamp", [] {
    Build build = open_tank();
    build.lamps = {drawn_lamp()};
    Lamp& lamp = build.lamps[0];
    const Position below{lamp.at.x, lamp.at.y, double(drawn(0, 580))};
    const double before = LightField(build).at(below).ppfd;
    lamp.at.z += drawn(1, 300);
    RC_ASSERT(LightField(build).at(below).ppfd <= before);
  });
}

TEST_CASE("a furnishing or a crown never adds light, and a lamp never takes any") {
  holds("in the way", [] {
    Build build = open_tank();
    build.lamps = {drawn_lamp()};
    const Position at = drawn_place();
    const double open = LightField(build).at(at).ppfd;
    build.furnishings = {drawn_stone(), drawn_branch()};
    const LightField field(build);
    const double past = field.at(at).ppfd;
    RC_ASSERT(past <= open * (1 + 1e-9));
    const Crown crown{drawn_place(), double(drawn(20, 200)), double(drawn(20, 200)), true};
    RC_ASSERT(field.at(at, {crown}).ppfd <= past * (1 + 1e-9));
    build.lamps.push_back(drawn_lamp());
    RC_ASSERT(LightField(build).at(at).ppfd >= past);
  });
}

TEST_CASE("a straight way up is hidden exactly when a point of it lies in the solid") {
  holds("blocked", [] {
    Build build = open_tank();
    build.furnishings = {drawn_stone(), drawn_branch()};
    Position a = drawn_place(), b = drawn_place();
    if (a.z > b.z) std::swap(a, b);
    RC_PRE(a.z < b.z);
    for (Solid s : solids_in(build)) {
      const Position way{b.x - a.x, b.y - a.y, b.z - a.z};
      const Screen screen(s, a);
      const bool hidden = screen.hides(way);
      if (hidden) RC_ASSERT(screen.may_hide(slopes_around(way)));
      if (passes_through(s, a, b)) RC_ASSERT(hidden);
      // What is hidden meets the solid when it is grown by what the steps leave between points.
      if (!hidden) continue;
      for (double& half : s.half) half += 3;
      s.radius += 3;
      RC_ASSERT(passes_through(s, a, b));
    }
  });
}
