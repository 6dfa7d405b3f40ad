#include "figure/faults.h"

#include <algorithm>

#include "base/text.h"
#include "figure/sketch.h"

namespace loamsheet {
namespace {

constexpr double least_size = 7;  // points
constexpr double touch = 0.02;    // mm: less is rounding

double side(Point a, Point b, Point p) {
  return (b.x - a.x) * (p.y - a.y) - (b.y - a.y) * (p.x - a.x);
}

bool within(double v, double a, double b) {
  return v >= std::min(a, b) && v <= std::max(a, b);
}

bool on_segment(Point a, Point b, Point p) {
  return side(a, b, p) == 0 && within(p.x, a.x, b.x) && within(p.y, a.y, b.y);
}

bool meet(Point a, Point b, Point c, Point d) {
  const double s1 = side(a, b, c), s2 = side(a, b, d), s3 = side(c, d, a), s4 = side(c, d, b);
  if (s1 * s2 < 0 && s3 * s4 < 0) return true;
  return on_segment(a, b, c) || on_segment(a, b, d) || on_segment(c, d, a) || on_segment(c, d, b);
}

// The segments of a line, each given to `see` until it says yes.
template <class See>
bool any_segment(const std::vector<Point>& points, bool closed, See see) {
  for (size_t i = 0; i + 1 < points.size(); ++i) {
    if (see(points[i], points[i + 1])) return true;
  }
  return closed && points.size() > 2 && see(points.back(), points.front());
}

bool cross(const Leader& a, const Leader& b) {
  return any_segment(a.points, false, [&](Point p, Point q) {
    return any_segment(b.points, false, [&](Point r, Point s) { return meet(p, q, r, s); });
  });
}

bool through(const std::vector<Point>& points, bool closed, const Box& box) {
  const Box in{box.left + touch, box.bottom + touch, box.right - touch, box.top - touch};
  return any_segment(points, closed, [&](Point p, Point q) {
    return in.contains(p) || in.contains(q) ||
           meet(p, q, {in.left, in.bottom}, {in.right, in.top}) ||
           meet(p, q, {in.left, in.top}, {in.right, in.bottom});
  });
}

struct Parts {
  const Figure& figure;
  std::vector<const Label*> labels;
  std::vector<const Leader*> leaders;
};

// Inside, by the crossings of a ray to the right.
bool covers(const Filled& area, Point p) {
  bool inside = false;
  any_segment(area.points, true, [&](Point a, Point b) {
    if ((a.y > p.y) != (b.y > p.y) && p.x < a.x + (b.x - a.x) * (p.y - a.y) / (b.y - a.y)) {
      inside = !inside;
    }
    return false;
  });
  return inside;
}

bool covers(const Filled& area, const Box& b) {
  return covers(area, Point{b.left, b.bottom}) && covers(area, Point{b.right, b.bottom}) &&
         covers(area, Point{b.right, b.top}) && covers(area, Point{b.left, b.top});
}

// The first mark that can be seen where a label stands: those before a filled area under it
// are hidden.
size_t first_seen(const Figure& f, const Label& label) {
  size_t first = 0;
  for (size_t i = 0; i < f.marks.size(); ++i) {
    if (std::get_if<Label>(&f.marks[i]) == &label) break;
    const auto* area = std::get_if<Filled>(&f.marks[i]);
    if (area && extent(f.marks[i]).overlaps(label.box) && covers(*area, label.box)) first = i;
  }
  return first;
}

Parts parts_of(const Figure& f) {
  Parts parts{f, {}, {}};
  for (const Mark& m : f.marks) {
    if (const auto* label = std::get_if<Label>(&m)) parts.labels.push_back(label);
    if (const auto* leader = std::get_if<Leader>(&m)) parts.leaders.push_back(leader);
  }
  return parts;
}

using Faults = std::vector<std::string>;

void find_overlaps(const Parts& parts, Faults& out) {
  for (size_t i = 0; i < parts.labels.size(); ++i) {
    for (size_t j = i + 1; j < parts.labels.size(); ++j) {
      if (!parts.labels[i]->box.overlaps(parts.labels[j]->box, -touch)) continue;
      out.push_back("labels overlap: '" + parts.labels[i]->text + "' and '" +
                    parts.labels[j]->text + "'");
    }
  }
}

void find_crossings(const Parts& parts, Faults& out) {
  for (size_t i = 0; i < parts.leaders.size(); ++i) {
    for (size_t j = i + 1; j < parts.leaders.size(); ++j) {
      if (!cross(*parts.leaders[i], *parts.leaders[j])) continue;
      out.push_back("leaders " + std::to_string(i + 1) + " and " + std::to_string(j + 1) +
                    " cross");
    }
  }
}

void find_lines_through(const Label& label, const Parts& parts, Faults& out) {
  const auto& marks = parts.figure.marks;
  for (size_t i = first_seen(parts.figure, label); i < marks.size(); ++i) {
    const auto* s = std::get_if<Stroke>(&marks[i]);
    if (s && through(s->points, s->closed, label.box)) {
      out.push_back("a line runs through '" + label.text + "'");
    }
  }
  for (const Leader* l : parts.leaders) {
    if (through(l->points, false, label.box)) {
      out.push_back("a leader runs through '" + label.text + "'");
    }
  }
}

void find_small(const Label& label, Faults& out) {
  if (label.size < least_size) out.push_back("'" + label.text + "' is under 7 points");
}

void find_outside(const Figure& f, Faults& out) {
  const Box box = extent(f);
  const bool inside = box.left >= -touch && box.bottom >= -touch && box.right <= f.width + touch &&
                      box.top <= f.height + touch;
  if (!inside) {
    out.push_back("marks reach outside the frame of " + fixed(f.width, 2) + " x " +
                  fixed(f.height, 2) + " mm");
  }
}

}  // namespace

std::vector<std::string> faults(const Figure& f) {
  const Parts parts = parts_of(f);
  Faults out;
  find_overlaps(parts, out);
  find_crossings(parts, out);
  for (const Label* label : parts.labels) {
    find_lines_through(*label, parts, out);
    find_small(*label, out);
  }
  find_outside(f, out);
  return out;
}

}  // namespace loamsheet
