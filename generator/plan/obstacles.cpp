#include "plan/obstacles.h"

#include <algorithm>
#include <cmath>
#include <numbers>

#include "plan/layers.h"

namespace loamsheet {
namespace {

constexpr double skin = 0.5, surface = 1;  // mm
constexpr double board = 10;               // mm: a ledge whose height is not stated

double ground_at(const Build& build, const Profile& layers, double y) {
  const Box box = extent(build.enclosure.footprint);
  const double back = box.height() > 0 ? std::clamp((y - box.bottom) / box.height(), 0.0, 1.0) : 0;
  return layers.litter_front.v + back * (layers.litter_back.v - layers.litter_front.v);
}

bool is_ledge(const Furnishing& f) {
  return f.kind == "ledge" || f.kind == "feeding-ledge";
}

double height_of(const Furnishing& f) {
  if (f.height.v > 0) return f.height.v;
  if (is_ledge(f)) return board;
  return f.kind == "water-bowl" ? f.depth.v : f.diameter.v;
}

double foot_of(const Build& build, const Profile& layers, const Furnishing& f) {
  if (is_ledge(f)) return f.at.z - height_of(f);
  const auto on_base = [&](const Standing& s) { return s.id == f.id && s.on_base; };
  if (std::any_of(build.standing.begin(), build.standing.end(), on_base)) return 0;
  return std::max(f.stands ? 0 : f.at.z, ground_at(build, layers, f.at.y));
}

Solid rod_of(const Furnishing& f) {
  Solid rod;
  rod.rod = true;
  rod.from = f.from, rod.to = f.to, rod.radius = f.diameter.v / 2;
  rod.around = space_of(f.from, f.to);
  const double r = rod.radius;
  Position &low = rod.around.low, &high = rod.around.high;
  low = {low.x - r, low.y - r, low.z - r}, high = {high.x + r, high.y + r, high.z + r};
  return rod;
}

Solid box_of(const Build& build, const Profile& layers, const Furnishing& f) {
  const bool flat = f.kind == "water-bowl";  // its depth is its height
  const double width = f.width.v > 0 ? f.width.v : f.diameter.v;
  const double depth = !flat && f.depth.v > 0 ? f.depth.v : f.diameter.v;
  const double angle = f.turned * std::numbers::pi / 180, height = height_of(f);
  Solid box;
  box.half[0] = width / 2, box.half[1] = depth / 2, box.half[2] = height / 2;
  box.cosine = std::cos(angle), box.sine = std::sin(angle);
  box.middle = {f.at.x, f.at.y, foot_of(build, layers, f) + height / 2};
  const double x = std::fabs(box.half[0] * box.cosine) + std::fabs(box.half[1] * box.sine);
  const double y = std::fabs(box.half[0] * box.sine) + std::fabs(box.half[1] * box.cosine);
  const Position& m = box.middle;
  box.around = {{m.x - x, m.y - y, m.z - height / 2}, {m.x + x, m.y + y, m.z + height / 2}};
  return box;
}

// As seen from the middle of a box, along its own sides.
Position seen_from(const Solid& box, const Position& p) {
  const double x = p.x - box.middle.x, y = p.y - box.middle.y;
  return {x * box.cosine + y * box.sine, y * box.cosine - x * box.sine, p.z - box.middle.z};
}

bool box_blocks(const Solid& box, const Position& from, const Position& to) {
  const Position a = seen_from(box, from), b = seen_from(box, to);
  const double start[] = {a.x, a.y, a.z}, end[] = {b.x, b.y, b.z};
  double enters = 0, leaves = 1;
  for (int axis = 0; axis < 3; ++axis) {
    const double way = end[axis] - start[axis], half = box.half[axis] - skin;
    if (std::fabs(way) < 1e-9) {
      if (std::fabs(start[axis]) >= half) return false;
      continue;
    }
    const double one = (-half - start[axis]) / way, other = (half - start[axis]) / way;
    enters = std::max(enters, std::min(one, other));
    leaves = std::min(leaves, std::max(one, other));
  }
  return leaves > enters;
}

Position minus(const Position& a, const Position& b) {
  return {a.x - b.x, a.y - b.y, a.z - b.z};
}

double dot(const Position& a, const Position& b) {
  return a.x * b.x + a.y * b.y + a.z * b.z;
}

double share(double v) {
  return std::clamp(v, 0.0, 1.0);
}

// The square of the least distance between two straight ways (Ericson 2005, Real-Time Collision
// Detection, 5.1.9, from memory; proved by trying points).
double nearest_square(const Solid& rod, const Position& from, const Position& to) {
  const Position u = minus(rod.to, rod.from), v = minus(to, from), w = minus(rod.from, from);
  const double a = dot(u, u), b = dot(u, v), c = dot(v, v), d = dot(u, w), e = dot(v, w);
  const double below = a * c - b * b;
  double s = below > 1e-9 ? share((b * e - c * d) / below) : 0;
  const double t = c > 0 ? share((b * s + e) / c) : 0;
  if (a > 0) s = share((b * t - d) / a);
  const Position gap{w.x + s * u.x - t * v.x, w.y + s * u.y - t * v.y, w.z + s * u.z - t * v.z};
  return dot(gap, gap);
}

bool reaches(double distance_square, double radius) {
  return radius > 0 && distance_square < radius * radius;
}

// The top of a solid over a place, where it lies over it.
std::optional<double> top_at(const Solid& s, Point p) {
  if (!s.rod) {
    const Position in = seen_from(s, {p.x, p.y, s.middle.z});
    const bool over = std::fabs(in.x) <= s.half[0] && std::fabs(in.y) <= s.half[1];
    return over ? std::optional(s.around.high.z) : std::nullopt;
  }
  const double dx = s.to.x - s.from.x, dy = s.to.y - s.from.y, square = dx * dx + dy * dy;
  const double t = square > 0 ? share(((p.x - s.from.x) * dx + (p.y - s.from.y) * dy) / square) : 1;
  const double away = std::hypot(s.from.x + t * dx - p.x, s.from.y + t * dy - p.y);
  if (away > s.radius) return std::nullopt;
  return s.from.z + t * (s.to.z - s.from.z) + s.radius;
}

}  // namespace

bool Space::meets(const Space& o) const {
  return low.x <= o.high.x && o.low.x <= high.x && low.y <= o.high.y && o.low.y <= high.y &&
         low.z <= o.high.z && o.low.z <= high.z;
}

Space space_of(const Position& a, const Position& b) {
  return {{std::min(a.x, b.x), std::min(a.y, b.y), std::min(a.z, b.z)},
          {std::max(a.x, b.x), std::max(a.y, b.y), std::max(a.z, b.z)}};
}

std::vector<Solid> solids_in(const Build& build) {
  const Profile layers = profile(build);
  std::vector<Solid> all;
  for (const Furnishing& f : build.furnishings) {
    if (f.kind == "basking-spot") continue;
    if (f.kind == "branch") {
      if (f.diameter.v > 0) all.push_back(rod_of(f));
      continue;
    }
    const Solid box = box_of(build, layers, f);
    if (std::min({box.half[0], box.half[1], box.half[2]}) > skin) all.push_back(box);
  }
  return all;
}

bool holds(const Solid& s, const Position& p) {
  if (s.rod) return reaches(nearest_square(s, p, p), s.radius + surface);
  const Position in = seen_from(s, p);
  return std::fabs(in.x) <= s.half[0] + surface && std::fabs(in.y) <= s.half[1] + surface &&
         std::fabs(in.z) <= s.half[2] + surface;
}

bool blocks(const Solid& s, const Position& from, const Position& to) {
  if (s.rod) return reaches(nearest_square(s, from, to), s.radius - skin);
  return box_blocks(s, from, to);
}

Millimetres resting_height(const Build& build, const std::vector<Solid>& solids, Point p) {
  double height = ground_at(build, profile(build), p.y);
  for (const Solid& s : solids) {
    if (const auto top = top_at(s, p)) height = std::max(height, *top);
  }
  return {height};
}

}  // namespace loamsheet
