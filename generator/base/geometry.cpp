#include "base/geometry.h"

#include <algorithm>
#include <cmath>
#include <numbers>

namespace loamsheet {
namespace {

using std::numbers::pi;

// One edge as a parametrised arc; a straight edge has radius 0.
struct Edge {
  Point a, b;
  double bulge = 0;
  Point centre;
  double radius = 0, from = 0, turn = 0;  // angle at a, signed angle to b
};

Edge edge_of(const Vertex& v, Point b) {
  Edge e{v.at, b, v.bulge, {}, 0, 0, 0};
  if (v.bulge == 0) return e;
  const double dx = b.x - v.at.x, dy = b.y - v.at.y, k = v.bulge;
  const double off =
      (1 - k * k) / (4 * k);  // centre's distance from the chord, in chords, to the left
  e.centre = {(v.at.x + b.x) / 2 - dy * off, (v.at.y + b.y) / 2 + dx * off};
  e.radius = std::hypot(v.at.x - e.centre.x, v.at.y - e.centre.y);
  e.from = std::atan2(v.at.y - e.centre.y, v.at.x - e.centre.x);
  e.turn = 4 * std::atan(k);
  return e;
}

// The edges of a region one after another, each made when it is looked at.
class Edges {
 public:
  explicit Edges(const Region& r) : corners_(r.corners) {}

  struct At {
    const std::vector<Vertex>& corners;
    size_t i;
    Edge operator*() const { return edge_of(corners[i], corners[(i + 1) % corners.size()].at); }
    At& operator++() { return ++i, *this; }
    bool operator!=(const At& other) const { return i != other.i; }
  };
  At begin() const { return {corners_, 0}; }
  At end() const { return {corners_, corners_.size()}; }

 private:
  const std::vector<Vertex>& corners_;
};

Point on(const Edge& e, double t) {  // t from 0 at a to 1 at b
  if (e.bulge == 0) return {e.a.x + (e.b.x - e.a.x) * t, e.a.y + (e.b.y - e.a.y) * t};
  const double angle = e.from + e.turn * t;
  return {e.centre.x + e.radius * std::cos(angle), e.centre.y + e.radius * std::sin(angle)};
}

// Integrals over the region by Green's theorem: its area and the first moments about the axes.
struct Moments {
  double area = 0, x = 0, y = 0;
  Moments& operator+=(const Moments& o) {
    area += o.area, x += o.x, y += o.y;
    return *this;
  }
};

// The line integrals of (x dy - y dx)/2, x^2 dy/2 and -y^2 dx/2 along the edge. Both kinds of edge
// must use these same forms: others that agree on a closed line differ along a part of it.
Moments straight(const Edge& e) {
  const double dx = e.b.x - e.a.x, dy = e.b.y - e.a.y;
  return {(e.a.x * e.b.y - e.b.x * e.a.y) / 2,
          dy * (e.a.x * e.a.x + e.a.x * e.b.x + e.b.x * e.b.x) / 6,
          -dx * (e.a.y * e.a.y + e.a.y * e.b.y + e.b.y * e.b.y) / 6};
}

Moments curved(const Edge& e) {
  const double r = e.radius, p = e.centre.x, q = e.centre.y, t0 = e.from, t1 = e.from + e.turn;
  const double s = std::sin(t1) - std::sin(t0), c = std::cos(t1) - std::cos(t0);
  const double double_angle = (std::sin(2 * t1) - std::sin(2 * t0)) / 4;
  const double cos2 = e.turn / 2 + double_angle, sin2 = e.turn / 2 - double_angle;
  const double cos3 = s - (std::pow(std::sin(t1), 3) - std::pow(std::sin(t0), 3)) / 3;
  const double sin3 = -c + (std::pow(std::cos(t1), 3) - std::pow(std::cos(t0), 3)) / 3;
  return {(r * r * e.turn + r * p * s - r * q * c) / 2,
          r / 2 * (p * p * s + 2 * p * r * cos2 + r * r * cos3),
          r / 2 * (-q * q * c + 2 * q * r * sin2 + r * r * sin3)};
}

Moments moments(const Region& r) {
  Moments sum;
  for (const Edge& e : Edges(r)) sum += e.bulge == 0 ? straight(e) : curved(e);
  return sum;
}

// Parameters in (0, 1) where the edge meets the line along which `axis` equals `limit`.
std::vector<double> crossings(const Edge& e, double Point::*axis, double limit) {
  std::vector<double> at;
  const double fa = e.a.*axis - limit, fb = e.b.*axis - limit;
  if (e.bulge == 0) {
    if (fa * fb < 0) at.push_back(fa / (fa - fb));
    return at;
  }
  const double ratio = (limit - e.centre.*axis) / e.radius;
  if (std::fabs(ratio) >= 1) return at;
  const double base = axis == &Point::y ? std::asin(ratio) : std::acos(ratio);
  const double other = axis == &Point::y ? pi - base : -base;
  for (double angle : {base, other}) {
    for (int k = -2; k <= 2; ++k) {
      const double t = (angle + 2 * pi * k - e.from) / e.turn;
      if (t > 1e-12 && t < 1 - 1e-12) at.push_back(t);
    }
  }
  std::sort(at.begin(), at.end());
  return at;
}

// The side of a line on which `sign * (axis - limit)` is not positive.
struct Half {
  double Point::*axis;
  double limit;
  double sign;
  bool holds(Point p) const { return sign * (p.*axis - limit) <= 1e-9; }
};

bool same_place(Point a, Point b) {
  return std::hypot(a.x - b.x, a.y - b.y) <= 1e-9;
}

void keep_piece(const Edge& e, double t0, double t1, const Half& half, Region& out) {
  if (!half.holds(on(e, (t0 + t1) / 2))) return;
  const double bulge = e.bulge == 0 ? 0 : std::tan(e.turn * (t1 - t0) / 4);
  const Point start = on(e, t0);
  if (!out.corners.empty() && same_place(out.corners.back().at, start)) {
    out.corners.back().bulge = bulge;
  } else {
    out.corners.push_back({start, bulge});
  }
  out.corners.push_back({on(e, t1), 0});
}

void drop_repeated_ends(Region& r) {
  while (r.corners.size() > 1 && same_place(r.corners.front().at, r.corners.back().at)) {
    r.corners.pop_back();
  }
}

Region clipped(const Region& r, const Half& half) {
  Region out;
  for (const Edge& e : Edges(r)) {
    double from = 0;
    for (double t : crossings(e, half.axis, half.limit)) {
      keep_piece(e, from, t, half, out);
      from = t;
    }
    keep_piece(e, from, 1, half, out);
  }
  drop_repeated_ends(out);
  return out;
}

double twice_signed_area(const std::vector<Point>& p) {
  double sum = 0;
  for (size_t i = 0; i < p.size(); ++i) {
    const Point& a = p[i];
    const Point& b = p[(i + 1) % p.size()];
    sum += a.x * b.y - b.x * a.y;
  }
  return sum;
}

double side(Point a, Point b, Point p) {
  return (b.x - a.x) * (p.y - a.y) - (b.y - a.y) * (p.x - a.x);
}

bool segments_meet(Point a, Point b, Point c, Point d) {
  const double s1 = side(a, b, c), s2 = side(a, b, d), s3 = side(c, d, a), s4 = side(c, d, b);
  if (s1 == 0 && s2 == 0) {
    Box ab, cd;
    ab.add(a), ab.add(b), cd.add(c), cd.add(d);
    return ab.left <= cd.right && cd.left <= ab.right && ab.bottom <= cd.top && cd.bottom <= ab.top;
  }
  return s1 * s2 <= 0 && s3 * s4 <= 0;
}

}  // namespace

void Box::add(Point p) {
  left = std::min(left, p.x), right = std::max(right, p.x);
  bottom = std::min(bottom, p.y), top = std::max(top, p.y);
}

void Box::add(const Box& b) {
  if (b.empty()) return;
  add(Point{b.left, b.bottom});
  add(Point{b.right, b.top});
}

Region rectangle(Millimetres width, Millimetres depth) {
  return {{{{0, 0}}, {{width.v, 0}}, {{width.v, depth.v}}, {{0, depth.v}}}};
}

Region bow_front(Millimetres width, Millimetres depth, Millimetres bulge) {
  Region r = rectangle(width, depth);
  r.corners[0].bulge = 2 * bulge.v / width.v;  // sagitta over half the chord
  return r;
}

Region cut_corner(Millimetres side, Millimetres cut) {
  const double s = side.v, c = cut.v;
  return {{{{0, 0}}, {{s - c, 0}}, {{s, c}}, {{s, s}}, {{0, s}}}};
}

Region hexagon(Millimetres across_flats) {
  const double d = across_flats.v, edge = d / std::numbers::sqrt3, wide = 2 * edge;
  return {{{{edge / 2, 0}},
           {{edge * 1.5, 0}},
           {{wide, d / 2}},
           {{edge * 1.5, d}},
           {{edge / 2, d}},
           {{0, d / 2}}}};
}

Region circle(Millimetres diameter) {
  const double r = diameter.v / 2;
  return {{{{0, r}, 1}, {{2 * r, r}, 1}}};
}

Region polygon(const std::vector<Point>& points) {
  Region r;
  for (const Point& p : points) r.corners.push_back({p, 0});
  if (twice_signed_area(points) < 0) std::reverse(r.corners.begin(), r.corners.end());
  return r;
}

bool crosses_itself(const std::vector<Point>& p) {
  const size_t n = p.size();
  for (size_t i = 0; i < n; ++i) {
    for (size_t j = i + 2; j < n; ++j) {
      if (i == 0 && j == n - 1) continue;
      if (segments_meet(p[i], p[i + 1], p[j], p[(j + 1) % n])) return true;
    }
  }
  return false;
}

SquareMetres area(const Region& r) {
  return {moments(r).area / 1e6};
}

Millimetres perimeter(const Region& r) {
  double sum = 0;
  for (const Edge& e : Edges(r)) {
    sum += e.bulge == 0 ? std::hypot(e.b.x - e.a.x, e.b.y - e.a.y) : e.radius * std::fabs(e.turn);
  }
  return {sum};
}

Point centroid(const Region& r) {
  const Moments m = moments(r);
  return {m.x / m.area, m.y / m.area};
}

Box extent(const Region& r) {
  Box box;
  for (const Edge& e : Edges(r)) {
    box.add(e.a);
    for (int quarter = -8; e.bulge != 0 && quarter <= 8; ++quarter) {
      const double t = (quarter * pi / 2 - e.from) / e.turn;
      if (t > 0 && t < 1) box.add(on(e, t));
    }
  }
  return box;
}

bool contains(const Region& r, Point p) {
  const auto reach = reach_at(r, p.x);
  if (!reach) return false;
  if (p.y < reach->low.v || p.y > reach->high.v) return false;
  int above = 0;
  for (const Edge& e : Edges(r)) {
    // A hair to the right, so that a corner on the line is not counted twice.
    for (double t : crossings(e, &Point::x, p.x + 1e-9)) above += on(e, t).y > p.y ? 1 : 0;
  }
  return above % 2 == 1;
}

Region below(const Region& r, double limit) {
  return clipped(r, {&Point::y, limit, 1});
}
Region left_of(const Region& r, double limit) {
  return clipped(r, {&Point::x, limit, 1});
}
Region right_of(const Region& r, double limit) {
  return clipped(r, {&Point::x, limit, -1});
}

std::vector<Point> outline(const Region& r, double sag) {
  std::vector<Point> points;
  for (const Edge& e : Edges(r)) {
    int steps = 1;
    if (e.bulge != 0) {
      const double step = 2 * std::acos(std::max(0.0, 1 - sag / e.radius));
      steps = std::max(2, static_cast<int>(std::ceil(std::fabs(e.turn) / step)));
    }
    for (int i = 0; i < steps; ++i) points.push_back(on(e, static_cast<double>(i) / steps));
  }
  return points;
}

std::optional<Range<Millimetres>> reach_at(const Region& r, double x) {
  Box box;
  for (const Edge& e : Edges(r)) {
    if (e.a.x == x) box.add(e.a);
    for (double t : crossings(e, &Point::x, x)) box.add(on(e, t));
  }
  if (box.empty()) return std::nullopt;
  return Range<Millimetres>{{box.bottom}, {box.top}};
}

}  // namespace loamsheet
