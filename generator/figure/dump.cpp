// dump: the figures as stable text, one mark a line, millimetres to 0.01.
#include "base/text.h"
#include "figure/figure.h"

namespace loamsheet {
namespace {

std::string at(Point p) {
  return ' ' + fixed(p.x, 2) + ',' + fixed(p.y, 2);
}

std::string through(const std::vector<Point>& points) {
  std::string out;
  for (const Point& p : points) out += at(p);
  return out;
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

struct Line {
  std::string operator()(const Filled& f) const {
    return "fill grey " + fixed(f.grey, 2) + through(f.points);
  }
  std::string operator()(const Stroke& s) const {
    return "stroke" + of(s.pen) + (s.closed ? " closed" : "") + through(s.points);
  }
  std::string operator()(const Leader& l) const { return "leader" + of(l.pen) + through(l.points); }
  std::string operator()(const Label& l) const {
    return std::string("label ") + name(l.face) + ' ' + fixed(l.size, 2) +
           (l.upright ? " upright" : "") + at(l.at) + " box" + at({l.box.left, l.box.bottom}) +
           at({l.box.right, l.box.top}) + " \"" + l.text + '"';
  }
};

}  // namespace

std::string dump(const Figures& figures) {
  std::string out = "figures v1\n";
  for (const Figure& f : figures.all) {
    out += "figure " + f.id + ' ' + fixed(f.width, 2) + 'x' + fixed(f.height, 2) +
           " scale 1:" + std::to_string(f.scale) + "\ntitle " + f.title + "\nalt " + f.alt + '\n';
    for (const Mark& m : f.marks) out += std::visit(Line{}, m) + '\n';
  }
  return out;
}

}  // namespace loamsheet
