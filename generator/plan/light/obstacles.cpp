#include "plan/light/obstacles.h"

#include <algorithm>
#include <cmath>
#include <numbers>

#include "plan/fill/fill.h"
#include "plan/light/vectors.h"

namespace loamsheet {
namespace {

constexpr double least = 0.5, surface = 1;  // mm: half a side; what counts as touching
constexpr double board = 10;                // mm: a ledge whose height is not stated

double ground_at(const Build& build, const Profile& layers, double y) {
  const Box box = extent(build.enclosure.footprint);
  const double back = box.height() > 0 ? std::clamp((y - box.bottom) / box.height(), 0.0, 1.0) : 0;
  return layers.litter_front.v + back * (layers.litter_back.v - layers.litter_front.v);
}

bool is_board(const Furnishing& f) {
  return f.kind->form == FurnishingKind::Form::board;
}

bool as_high_as_deep(const Furnishing& f) {
  return f.kind->height == FurnishingKind::Height::depth;
}

double height_of(const Furnishing& f) {
  if (f.height.v > 0) return f.height.v;
  if (is_board(f)) return board;
  return as_high_as_deep(f) ? f.depth.v : f.diameter.v;
}

double foot_of(const Build& build, const Profile& layers, const Furnishing& f) {
  if (is_board(f)) return f.at.z - height_of(f);
  const auto on_base = [&](const Standing& s) { return s.id == f.id && s.on_base; };
  if (std::any_of(build.standing.begin(), build.standing.end(), on_base)) return 0;
  return std::max(f.stands ? 0 : f.at.z, ground_at(build, layers, f.at.y));
}

Solid rod_of(const Furnishing& f) {
  Solid rod;
  rod.rod = true;
  rod.from = f.from, rod.to = f.to, rod.radius = f.diameter.v / 2;
  const auto [left, right] = std::minmax(f.from.x, f.to.x);
  const auto [front, back] = std::minmax(f.from.y, f.to.y);
  const auto [low, high] = std::minmax(f.from.z, f.to.z);
  const double r = rod.radius;
  rod.around = {{left - r, front - r, low - r}, {right + r, back + r, high + r}};
  return rod;
}

Solid box_of(const Build& build, const Profile& layers, const Furnishing& f) {
  const bool flat = as_high_as_deep(f);  // so its depth is not that of its floor
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

// The top of a solid over a place, where it lies over it.
std::optional<double> top_at(const Solid& s, Point p) {
  if (!s.rod) {
    const Position in = seen_from(s, {p.x, p.y, s.middle.z});
    const bool over = std::fabs(in.x) <= s.half[0] && std::fabs(in.y) <= s.half[1];
    return over ? std::optional(s.around.high.z) : std::nullopt;
  }
  if (distance(flat(p), flat(s.from), flat(s.to)) > s.radius) return std::nullopt;
  const bool upright = s.from.x == s.to.x && s.from.y == s.to.y;
  const double along = upright ? 1 : nearest_share(flat(s.from), flat(s.to), flat(p));
  return between(s.from, s.to, along).z + s.radius;
}

}  // namespace

std::vector<Solid> solids_in(const Build& build) {
  const Profile layers = profile(build);
  std::vector<Solid> all;
  for (const Furnishing& f : build.furnishings) {
    if (!f.kind->is_a_thing()) continue;
    if (f.kind->spans()) {
      if (f.diameter.v > 0) all.push_back(rod_of(f));
      continue;
    }
    const Solid box = box_of(build, layers, f);
    if (std::min({box.half[0], box.half[1], box.half[2]}) > least) all.push_back(box);
  }
  return all;
}

Position seen_from(const Solid& box, const Position& p) {
  const double x = p.x - box.middle.x, y = p.y - box.middle.y;
  return {x * box.cosine + y * box.sine, y * box.cosine - x * box.sine, p.z - box.middle.z};
}

bool holds(const Solid& s, const Position& p) {
  if (s.rod) return distance_square(p, s.from, s.to) <= (s.radius + surface) * (s.radius + surface);
  const Position in = seen_from(s, p);
  return std::fabs(in.x) <= s.half[0] + surface && std::fabs(in.y) <= s.half[1] + surface &&
         std::fabs(in.z) <= s.half[2] + surface;
}

Millimetres resting_height(const Build& build, const std::vector<Solid>& solids, Point p) {
  double height = ground_at(build, profile(build), p.y);
  for (const Solid& s : solids) {
    if (const auto top = top_at(s, p)) height = std::max(height, *top);
  }
  return {height};
}

}  // namespace loamsheet
