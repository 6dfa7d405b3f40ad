#include "figure/sketch.h"

#include <algorithm>
#include <iterator>

namespace loamsheet {
namespace {

// Numbers of dimensions stand on the base line.
bool numeric(const std::string& words) {
  return words.find_first_not_of("0123456789 ./") == std::string::npos;
}

// Ascenders stand a little over the capitals.
constexpr double ascender_over_cap = 1.08;

Box around(const std::vector<Point>& points, double reach) {
  Box box;
  for (const Point& p : points) {
    box.add(Point{p.x - reach, p.y - reach});
    box.add(Point{p.x + reach, p.y + reach});
  }
  return box;
}

struct Extent {
  Box operator()(const Filled& f) const { return around(f.points, 0); }
  Box operator()(const Stroke& s) const { return around(s.points, s.pen.width / 2); }
  Box operator()(const Label& l) const { return l.box; }
  Box operator()(const Leader& l) const {
    Box box = around(l.points, l.pen.width / 2);
    if (!l.points.empty()) box.add(around({l.points.back()}, leader_dot));
    return box;
  }
};

struct Shift {
  double dx, dy;
  void move(std::vector<Point>& points) const {
    for (Point& p : points) p = {p.x + dx, p.y + dy};
  }
  void operator()(Filled& f) const { move(f.points); }
  void operator()(Stroke& s) const { move(s.points); }
  void operator()(Leader& l) const { move(l.points); }
  void operator()(Label& l) const {
    l.at = {l.at.x + dx, l.at.y + dy};
    l.box = {l.box.left + dx, l.box.bottom + dy, l.box.right + dx, l.box.top + dy};
  }
};

}  // namespace

std::vector<Point> rectangle_points(const Box& b) {
  return {{b.left, b.bottom}, {b.right, b.bottom}, {b.right, b.top}, {b.left, b.top}};
}

Box box_of(Point a, Point b) {
  return {std::min(a.x, b.x), std::min(a.y, b.y), std::max(a.x, b.x), std::max(a.y, b.y)};
}

Mark line(Point a, Point b, const Pen& pen) {
  return Stroke{{a, b}, false, pen};
}

Mark outline_of(const Box& b, const Pen& pen) {
  return Stroke{rectangle_points(b), true, pen};
}

Mark filled(const Box& b, double grey) {
  return Filled{rectangle_points(b), grey};
}

double width_mm(const Typefaces& type, const Text& t) {
  return type.width(t.face, t.size, t.words) * mm_per_point;
}

double pitch_mm(const Text& t) {
  return 1.18 * t.size * mm_per_point;
}

Label label_at(const Typefaces& type, const Text& t, Point at, bool upright) {
  const FaceMetrics m = type.metrics(t.face);
  const double em = t.size * mm_per_point, wide = width_mm(type, t);
  const double up = m.cap_height * ascender_over_cap * em,
               down = numeric(t.words) ? 0 : m.descent * em;
  const Box box = upright ? Box{at.x - up, at.y, at.x + down, at.y + wide}
                          : Box{at.x, at.y - down, at.x + wide, at.y + up};
  return {t.words, at, t.size, t.face, upright, box};
}

void add(Marks& to, Marks more) {
  std::move(more.begin(), more.end(), std::back_inserter(to));
}

void shift(Marks& marks, double dx, double dy) {
  for (Mark& m : marks) std::visit(Shift{dx, dy}, m);
}

Box extent(const Mark& m) {
  return std::visit(Extent{}, m);
}

Box extent(const Marks& marks) {
  Box box;
  for (const Mark& m : marks) box.add(extent(m));
  return box;
}

}  // namespace loamsheet
