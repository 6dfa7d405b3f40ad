#include "plan/light/screen.h"

#include <algorithm>
#include <cmath>

#include "plan/light/vectors.h"

namespace loamsheet {
namespace {

constexpr double skin = 0.5;    // mm
constexpr double level = 1e-6;  // mm: a slope's least rise

}  // namespace

Box slopes_to(const Space& s, const Position& from) {
  const Position low = minus(s.low, from), high = minus(s.high, from);
  if (high.z <= 0) return {};
  const double foot = std::max(low.z, level);
  const auto least = [&](double v) { return v / (v < 0 ? foot : high.z); };
  const auto most = [&](double v) { return v / (v > 0 ? foot : high.z); };
  return {least(low.x), least(low.y), most(high.x), most(high.y)};
}

Screen::Screen(const Solid& s, const Position& place)
    : solid_(&s), slopes_(slopes_to(s.around, place)) {
  if (!s.rod) {
    start_ = seen_from(s, place);
    return;
  }
  start_ = minus(s.from, place), along_ = minus(s.to, s.from), aside_ = cross(along_, start_);
  length_square_ = dot(along_, along_), start_along_ = dot(start_, along_);
}

// Straight lines without ends are no nearer than their common perpendicular.
bool Screen::near_axis(const Box& slopes) const {
  const double x = (slopes.left + slopes.right) / 2, y = (slopes.bottom + slopes.top) / 2;
  const double wide = slopes.width() / 2, deep = slopes.height() / 2;
  const double least = std::fabs(aside_.x * x + aside_.y * y + aside_.z) -
                       std::fabs(aside_.x) * wide - std::fabs(aside_.y) * deep;
  const double far_x = std::fabs(x) + wide, far_y = std::fabs(y) + deep;
  const double longest = 1 + far_x * far_x + far_y * far_y;
  const double radius = solid_->radius - skin;
  return least <= 0 || least * least <= radius * radius * length_square_ * longest;
}

// By the least distance between two straight ways (Ericson 2005, Real-Time Collision Detection,
// 5.1.9, from memory; proved by trying points), unless the lines they lie on are farther apart.
bool Screen::rod_hides(const Position& way) const {
  const double radius = solid_->radius - skin;
  if (radius <= 0) return false;
  const double a = length_square_, b = dot(along_, way), c = dot(way, way), e = dot(way, start_);
  const double below = a * c - b * b, off = dot(way, aside_);
  if (off * off > radius * radius * below) return false;
  double s = below > 1e-9 ? share((b * e - c * start_along_) / below) : 0;
  const double t = share((b * s + e) / c);
  if (a > 0) s = share((b * t - start_along_) / a);
  const Position gap{start_.x + s * along_.x - t * way.x, start_.y + s * along_.y - t * way.y,
                     start_.z + s * along_.z - t * way.z};
  return dot(gap, gap) < radius * radius;
}

bool Screen::box_hides(const Position& way) const {
  const Solid& box = *solid_;
  const double start[] = {start_.x, start_.y, start_.z};
  const double ways[] = {way.x * box.cosine + way.y * box.sine,
                         way.y * box.cosine - way.x * box.sine, way.z};
  double enters = 0, leaves = 1;
  for (int axis = 0; axis < 3; ++axis) {
    const double half = box.half[axis] - skin;
    if (std::fabs(ways[axis]) < 1e-9) {
      if (std::fabs(start[axis]) >= half) return false;
      continue;
    }
    const double one = (-half - start[axis]) / ways[axis];
    const double other = (half - start[axis]) / ways[axis];
    enters = std::max(enters, std::min(one, other));
    leaves = std::min(leaves, std::max(one, other));
  }
  return leaves > enters;
}

}  // namespace loamsheet
