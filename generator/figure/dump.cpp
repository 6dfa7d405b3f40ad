// dump: the figures as text, one mark a line, in which a change stays small. Millimetres to 0.01; a
// mark's place is its way from the mark before, its points are from its first. Of a hatch only how
// many marks it has, how far they reach and how long they are in all.
#include <cmath>
#include <utility>

#include "base/text.h"
#include "figure/figure.h"
#include "figure/sketch.h"

namespace loamsheet {
namespace {

std::string at(Point p) {
  return ' ' + fixed(p.x, 2) + ',' + fixed(p.y, 2);
}

std::string size(double width, double height) {
  return ' ' + fixed(width, 2) + 'x' + fixed(height, 2);
}

std::string of(const Pen& pen) {
  std::string out = " pen " + fixed(pen.width, 2) + " grey " + fixed(pen.grey, 2);
  for (size_t i = 0; i < pen.dashes.size(); ++i) {
    out += (i == 0 ? " dashes " : "/") + fixed(pen.dashes[i], 2);
  }
  return out;
}

const char* name(Face f) {
  return f == Face::regular ? "regular" : f == Face::bold ? "bold" : "italic";
}

double length(const std::vector<Point>& points, bool closed) {
  double sum = 0;
  for (size_t i = 1; i < points.size(); ++i) {
    sum += std::hypot(points[i].x - points[i - 1].x, points[i].y - points[i - 1].y);
  }
  const Point &first = points.front(), &last = points.back();
  return sum + (closed ? std::hypot(first.x - last.x, first.y - last.y) : 0);
}

// What all marks of a run are alike in; empty for a mark that stands alone.
struct Likeness {
  std::string operator()(const Filled& f) const { return "fills grey " + fixed(f.grey, 2); }
  std::string operator()(const Stroke& s) const {
    return (s.closed ? "closed strokes" : "strokes") + of(s.pen);
  }
  std::string operator()(const Leader&) const { return ""; }
  std::string operator()(const Label&) const { return ""; }
};

struct Length {
  double operator()(const Filled& f) const { return length(f.points, true); }
  double operator()(const Stroke& s) const { return length(s.points, s.closed); }
  double operator()(const Leader& l) const { return length(l.points, false); }
  double operator()(const Label&) const { return 0; }
};

class Writer {
 public:
  std::string operator()(const Filled& f) {
    return "fill grey " + fixed(f.grey, 2) + through(f.points);
  }
  std::string operator()(const Stroke& s) {
    return "stroke" + of(s.pen) + (s.closed ? " closed" : "") + through(s.points);
  }
  std::string operator()(const Leader& l) { return "leader" + of(l.pen) + through(l.points); }
  std::string operator()(const Label& l) {
    return std::string("label ") + name(l.face) + ' ' + fixed(l.size, 2) +
           (l.upright ? " upright" : "") + place(l.at) + size(l.box.width(), l.box.height()) +
           " \"" + l.text + '"';
  }
  std::string run(const Marks& marks) {
    const Box reach = extent(marks);
    double sum = 0;
    for (const Mark& m : marks) sum += std::visit(Length{}, m);
    return std::to_string(marks.size()) + ' ' + std::visit(Likeness{}, marks.front()) +
           place({reach.left, reach.bottom}) + size(reach.width(), reach.height()) + " long " +
           fixed(sum, 2);
  }

 private:
  std::string place(Point p) {
    const Point before = std::exchange(last_, p);
    return at({p.x - before.x, p.y - before.y});
  }

  // A figure that is filled and then edged is said once.
  std::string through(const std::vector<Point>& points) {
    if (std::exchange(points_, points) == points) return " the same";
    std::string out = place(points.front()) + " to";
    for (size_t i = 1; i < points.size(); ++i) {
      out += at({points[i].x - last_.x, points[i].y - last_.y});
    }
    return out;
  }

  std::vector<Point> points_;
  Point last_;
};

constexpr size_t least_run = 5;

size_t end_of_run(const Marks& marks, size_t from) {
  const std::string like = std::visit(Likeness{}, marks[from]);
  size_t end = from + 1;
  while (end < marks.size() && std::visit(Likeness{}, marks[end]) == like) ++end;
  return like.empty() || end - from < least_run ? from + 1 : end;
}

std::string lines(const Marks& marks) {
  Writer writer;
  std::string out;
  for (size_t from = 0, end = 0; from < marks.size(); from = end) {
    end = end_of_run(marks, from);
    const Marks run(marks.begin() + static_cast<long>(from),
                    marks.begin() + static_cast<long>(end));
    out += (run.size() > 1 ? writer.run(run) : std::visit(writer, marks[from])) + '\n';
  }
  return out;
}

}  // namespace

std::string dump(const Figures& figures) {
  std::string out = "figures v2\n";
  for (const Figure& f : figures.all) {
    out += "figure " + f.id + size(f.width, f.height) + " scale 1:" + std::to_string(f.scale) +
           "\ntitle " + f.title + "\nalt " + f.alt + '\n' + lines(f.marks);
  }
  return out;
}

}  // namespace loamsheet
