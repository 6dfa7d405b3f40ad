// floor: furnishings from above.
#include <algorithm>
#include <cmath>
#include <numbers>

#include "figure/floor.h"
#include "figure/numbers.h"
#include "figure/words.h"

namespace loamsheet {
namespace {

using Points = std::vector<Point>;

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

Marks solid(Points points, double tone = 1) {
  return {Filled{points, tone}, Stroke{points, true, thing_pen}};
}

// A number from 0.86 to 1 that looks random.
double dent(int i) {
  const double wave = std::sin(i * 12.9898) * 43758.5453;
  return 0.86 + 0.14 * (wave - std::floor(wave));
}

Marks stone(const Turned& f, double half_x, double half_y) {
  Points edge;
  for (int i = 0; i < 14; ++i) {
    const double angle = 2 * std::numbers::pi * i / 14, c = std::cos(angle), s = std::sin(angle);
    const auto corner = [](double v) { return std::copysign(std::sqrt(std::fabs(v)), v); };
    edge.push_back(f.at(half_x * corner(c) * dent(i), half_y * corner(s) * dent(i)));
  }
  Marks out = solid(edge);
  out.push_back(line(f.at(-half_x * 0.3, half_y * 0.5), f.at(half_x * 0.2, -half_y * 0.35)));
  return out;
}

// A tube with the mouth at its right end.
Marks tube(const Turned& f, double half_x, double half_y) {
  Marks out = solid(f.box(half_x, half_y));
  Points mouth;
  for (int i = 0; i < 24; ++i) {
    const double angle = 2 * std::numbers::pi * i / 24;
    mouth.push_back(f.at(half_x - half_y * 0.3 * (1 - std::cos(angle)) - 0.15,
                         (half_y - 0.15) * std::sin(angle)));
  }
  out.push_back(Stroke{std::move(mouth), true, pen::narrow});
  return out;
}

Marks bowl(Point middle, double radius) {
  Marks out = solid(circle_points(middle, radius));
  add(out, {Filled{circle_points(middle, radius * 0.8), 0.86},
            Stroke{circle_points(middle, radius * 0.8), true, pen::narrow}});
  return out;
}

Marks ledge(const Turned& f, double half_x, double half_y, bool pocket) {
  Marks out = solid(f.box(half_x, half_y));
  if (pocket) {
    out.push_back(Stroke{f.box(half_x * 0.75, half_y * 0.65), true, pen::hidden});
  }
  return out;
}

// A hide has a roof ridge, a laying box a rim.
Marks shelter(const Turned& f, double half_x, double half_y, bool rim) {
  Marks out = solid(f.box(half_x, half_y));
  if (rim) out.push_back(Stroke{f.box(half_x * 0.85, half_y * 0.85), true, pen::narrow});
  if (!rim) out.push_back(line(f.at(-half_x, 0), f.at(half_x, 0)));
  return out;
}

Marks branch(const Tank& t, const Furnishing& thing) {
  const Point a{t.x(thing.from.x), t.y(thing.from.y)}, b{t.x(thing.to.x), t.y(thing.to.y)};
  const double length = std::hypot(b.x - a.x, b.y - a.y);
  const double half = std::max(t.paper(thing.diameter) / 2, 0.5);
  const double turn = std::atan2(b.y - a.y, b.x - a.x) * 180 / std::numbers::pi;
  const Turned f({(a.x + b.x) / 2, (a.y + b.y) / 2}, turn);
  return solid(f.box(std::max(length / 2, half), half));
}

Marks of_no_size(Point p) {
  return {line({p.x - cross_half, p.y}, {p.x + cross_half, p.y}, thing_pen),
          line({p.x, p.y - cross_half}, {p.x, p.y + cross_half}, thing_pen)};
}

Marks seen_from_above(const Tank& t, const Furnishing& thing) {
  const std::string& kind = thing.kind;
  if (kind == "branch") return branch(t, thing);
  const Point middle{t.x(thing.at.x), t.y(thing.at.y)};
  const Turned f(middle, thing.turned);
  const double across = t.paper(thing.diameter) / 2;
  const double half_x = t.paper(thing.width) / 2, half_y = t.paper(thing.depth) / 2;
  if (kind == "tube" && half_x > 0 && across > 0) return tube(f, half_x, across);
  if (across > 0) return bowl(middle, across);
  if (half_x <= 0 || half_y <= 0) return of_no_size(middle);
  if (kind == "stone" || kind == "basking-spot") return stone(f, half_x, half_y);
  if (kind == "hide" || kind == "laying-box") {
    return shelter(f, half_x, half_y, kind == "laying-box");
  }
  return ledge(f, half_x, half_y, thing.pocket.v > 0);
}

double base_height(const Furnishing& thing) {
  return thing.kind == "branch" ? std::min(thing.from.z, thing.to.z) : thing.at.z;
}

// Nothing is drawn beyond the walls.
void keep_in(Marks& marks, const Tank& t) {
  const auto into = [&](Points& points) {
    for (Point& p : points) p = {std::clamp(p.x, 0.0, t.width), std::clamp(p.y, 0.0, t.depth)};
  };
  for (Mark& m : marks) {
    if (auto* s = std::get_if<Stroke>(&m)) into(s->points);
    if (auto* f = std::get_if<Filled>(&m)) into(f->points);
  }
}

}  // namespace

// What lies lower is drawn first.
Drawing furnishings_above(const Tank& t) {
  std::vector<const Furnishing*> things;
  for (const Furnishing& thing : t.in.build.furnishings) things.push_back(&thing);
  std::stable_sort(things.begin(), things.end(), [](const Furnishing* a, const Furnishing* b) {
    return base_height(*a) < base_height(*b);
  });
  Drawing d;
  for (const Furnishing* thing : things) {
    Marks marks = seen_from_above(t, *thing);
    keep_in(marks, t);
    const Box box = extent(marks);
    Target target = furnishing_label(t.in, *thing);
    target.at = {box.right - std::min(0.8, box.width() / 4), (box.bottom + box.top) / 2};
    if (thing->turned == 0) target.slack = box.height() / 4;
    if (thing->kind == "branch") {
      target.slack = 0;
      const Position& end = thing->from.x > thing->to.x ? thing->from : thing->to;
      const Position& other = thing->from.x > thing->to.x ? thing->to : thing->from;
      target.at = {t.x(end.x * 0.95 + other.x * 0.05), t.y(end.y * 0.95 + other.y * 0.05)};
    }
    d.targets.push_back(std::move(target));
    add(d.marks, std::move(marks));
  }
  return d;
}

}  // namespace loamsheet
