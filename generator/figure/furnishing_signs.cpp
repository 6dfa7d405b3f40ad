#include "figure/furnishing_signs.h"

#include <algorithm>
#include <cmath>
#include <numbers>

#include "base/named.h"
#include "figure/numbers.h"

namespace loamsheet {
namespace {

using Points = std::vector<Point>;
using Sign = FurnishingKind::Sign;

const Pen thing_pen{0.35, 0, {}};
constexpr double cross_half = 1.2;  // mm, of the sign for a thing without a stated size

// A thing's own frame: the middle, turned to the left.
struct Turned {
  Point middle;
  double cosine, sine;
  Turned(Point at, double degrees)
      : middle(at),
        cosine(std::cos(degrees * std::numbers::pi / 180)),
        sine(std::sin(degrees * std::numbers::pi / 180)) {}
  Point at(double x, double y) const {
    return {middle.x + x * cosine - y * sine, middle.y + x * sine + y * cosine};
  }
  Points box(double half_x, double half_y) const {
    return {at(-half_x, -half_y), at(half_x, -half_y), at(half_x, half_y), at(-half_x, half_y)};
  }
};

// A thing on paper; measures that are not stated are zero.
struct Seen {
  const Tank& tank;
  const Furnishing& thing;
  Turned frame;
  double half_x, half_y, radius;
  Seen(const Tank& t, const Furnishing& f)
      : tank(t),
        thing(f),
        frame({t.x(f.at.x), t.y(f.at.y)}, f.turned),
        half_x(t.paper(f.width) / 2),
        half_y(t.paper(f.depth) / 2),
        radius(t.paper(f.diameter) / 2) {}
};

Marks solid(Points points) {
  return {Filled{points, 1}, Stroke{points, true, thing_pen}};
}

// A number from 0.86 to 1 that looks random.
double dent(int i) {
  const double wave = std::sin(i * 12.9898) * 43758.5453;
  return 0.86 + 0.14 * (wave - std::floor(wave));
}

Marks stone(const Seen& s) {
  Points edge;
  for (int i = 0; i < 14; ++i) {
    const double angle = 2 * std::numbers::pi * i / 14, c = std::cos(angle), t = std::sin(angle);
    const auto corner = [](double v) { return std::copysign(std::sqrt(std::fabs(v)), v); };
    edge.push_back(s.frame.at(s.half_x * corner(c) * dent(i), s.half_y * corner(t) * dent(i)));
  }
  Marks out = solid(edge);
  out.push_back(line(s.frame.at(-s.half_x * 0.3, s.half_y * 0.5),
                     s.frame.at(s.half_x * 0.2, -s.half_y * 0.35)));
  return out;
}

Marks bowl(const Seen& s) {
  const Point middle = s.frame.middle;
  Marks out = solid(circle_points(middle, s.radius));
  add(out, {Filled{circle_points(middle, s.radius * 0.8), 0.86},
            Stroke{circle_points(middle, s.radius * 0.8), true, pen::narrow}});
  return out;
}

Marks board(const Seen& s) {
  Marks out = solid(s.frame.box(s.half_x, s.half_y));
  if (s.thing.pocket.v > 0) {
    out.push_back(Stroke{s.frame.box(s.half_x * 0.75, s.half_y * 0.65), true, pen::hidden});
  }
  return out;
}

Marks roofed(const Seen& s) {
  Marks out = solid(s.frame.box(s.half_x, s.half_y));
  out.push_back(line(s.frame.at(-s.half_x, 0), s.frame.at(s.half_x, 0)));
  return out;
}

Marks rimmed(const Seen& s) {
  Marks out = solid(s.frame.box(s.half_x, s.half_y));
  out.push_back(Stroke{s.frame.box(s.half_x * 0.85, s.half_y * 0.85), true, pen::narrow});
  return out;
}

Marks of_no_size(Point p) {
  return {line({p.x - cross_half, p.y}, {p.x + cross_half, p.y}, thing_pen),
          line({p.x, p.y - cross_half}, {p.x, p.y + cross_half}, thing_pen)};
}

// A thing with two sides; one that is round is seen as a bowl is.
template <Marks (*drawn)(const Seen&)>
Marks sized(const Seen& s) {
  if (s.radius > 0) return bowl(s);
  return s.half_x > 0 && s.half_y > 0 ? drawn(s) : of_no_size(s.frame.middle);
}

// With the mouth at its right end.
Marks tube(const Seen& s) {
  if (s.half_x <= 0 || s.radius <= 0) return sized<board>(s);
  Marks out = solid(s.frame.box(s.half_x, s.radius));
  Points mouth;
  for (int i = 0; i < 24; ++i) {
    const double angle = 2 * std::numbers::pi * i / 24;
    mouth.push_back(s.frame.at(s.half_x - s.radius * 0.3 * (1 - std::cos(angle)) - 0.15,
                               (s.radius - 0.15) * std::sin(angle)));
  }
  out.push_back(Stroke{std::move(mouth), true, pen::narrow});
  return out;
}

Marks rod(const Seen& s) {
  const Tank& t = s.tank;
  const Position &from = s.thing.from, &to = s.thing.to;
  const Point a{t.x(from.x), t.y(from.y)}, b{t.x(to.x), t.y(to.y)};
  const double length = std::hypot(b.x - a.x, b.y - a.y);
  const double half = std::max(s.radius, 0.5);
  const double turn = std::atan2(b.y - a.y, b.x - a.x) * 180 / std::numbers::pi;
  const Turned f({(a.x + b.x) / 2, (a.y + b.y) / 2}, turn);
  return solid(f.box(std::max(length / 2, half), half));
}

// A bar between its ends.
Marks rod_front(const Tank& t, const Furnishing& f) {
  const Point a{t.x(f.from.x), f.from.z / t.scale}, b{t.x(f.to.x), f.to.z / t.scale};
  const double length = std::hypot(b.x - a.x, b.y - a.y);
  if (length == 0) return {};
  const double half = std::max(t.paper(f.diameter) / 2, 0.4) / length;
  const double nx = -(b.y - a.y) * half, ny = (b.x - a.x) * half;
  Points points{
      {a.x - nx, a.y - ny}, {b.x - nx, b.y - ny}, {b.x + nx, b.y + ny}, {a.x + nx, a.y + ny}};
  for (Point& p : points) p = {std::clamp(p.x, 0.0, t.width), std::clamp(p.y, 0.0, t.height)};
  return solid(points);
}

Marks board_front(const Tank& t, const Furnishing& f) {
  const double half = std::max(t.paper(f.width) / 2, 0.8), x = t.x(f.at.x);
  const double thick = std::max(t.paper(f.height), 1.0), top = f.at.z / t.scale;
  const Box box{std::max(x - half, 0.0), std::clamp(top - thick, 0.0, t.height),
                std::min(x + half, t.width), std::clamp(top, 0.0, t.height)};
  if (box.empty() || box.bottom >= box.top) return {};
  return {filled(box, 1), outline_of(box, thing_pen)};
}

Marks nothing(const Tank&, const Furnishing&) {
  return {};
}

struct Drawn {
  Marks (*above)(const Seen&);
  Marks (*front)(const Tank&, const Furnishing&);
};

constexpr For<Sign, Drawn> signs[] = {
    {Sign::tube, {tube, nothing}},
    {Sign::rod, {rod, rod_front}},
    {Sign::board, {sized<board>, board_front}},
    {Sign::bowl, {sized<board>, nothing}},
    {Sign::stone, {sized<stone>, nothing}},
    {Sign::roofed, {sized<roofed>, nothing}},
    {Sign::rimmed, {sized<rimmed>, nothing}},
};

}  // namespace

Marks seen_from_above(const Tank& t, const Furnishing& thing) {
  return what_of(signs, thing.kind->sign).above(Seen(t, thing));
}

Marks seen_from_front(const Tank& t, const Furnishing& thing) {
  return what_of(signs, thing.kind->sign).front(t, thing);
}

}  // namespace loamsheet
