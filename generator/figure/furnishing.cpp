#include "figure/furnishing.h"

#include <algorithm>
#include <cmath>

namespace loamsheet {
namespace {

const Pen outline_pen{0.35, 0, {}};

// Outlined above the height that hides it, dashed below; closed where it stands in the open.
Marks upright_box(const Box& box, double hidden_up_to) {
  const double from = std::clamp(hidden_up_to, box.bottom, box.top);
  Marks out;
  if (from > box.bottom) {
    out.push_back(Stroke{
        {{box.left, from}, {box.left, box.bottom}, {box.right, box.bottom}, {box.right, from}},
        false,
        pen::hidden});
  }
  if (from < box.top) {
    out.push_back(filled({box.left, from, box.right, box.top}, 1));
    out.push_back(
        Stroke{{{box.left, from}, {box.left, box.top}, {box.right, box.top}, {box.right, from}},
               from <= box.bottom,
               outline_pen});
  }
  return out;
}

Box box_around(const Tank& t, const Standing& s, double middle, double along) {
  const double half = std::sqrt(s.base.v) * 1000 / t.scale / 2;
  const double foot = s.on_base ? 0 : t.surface(std::clamp(t.y(s.at.y), 0.0, t.depth));
  return {std::max(middle - half, 0.0), foot, std::min(middle + half, along),
          std::min(foot + t.paper(s.height), t.height)};
}

// A branch as a bar between its ends.
Marks branch_front(const Tank& t, const Furnishing& f) {
  const Point a{t.x(f.from.x), f.from.z / t.scale}, b{t.x(f.to.x), f.to.z / t.scale};
  const double length = std::hypot(b.x - a.x, b.y - a.y);
  if (length == 0) return {};
  const double half = std::max(t.paper(f.diameter) / 2, 0.4) / length;
  const double nx = -(b.y - a.y) * half, ny = (b.x - a.x) * half;
  std::vector<Point> points{
      {a.x - nx, a.y - ny}, {b.x - nx, b.y - ny}, {b.x + nx, b.y + ny}, {a.x + nx, a.y + ny}};
  for (Point& p : points) p = {std::clamp(p.x, 0.0, t.width), std::clamp(p.y, 0.0, t.height)};
  return {Filled{points, 1}, Stroke{points, true, outline_pen}};
}

Marks ledge_front(const Tank& t, const Furnishing& f) {
  const double half = std::max(t.paper(f.width) / 2, 0.8), x = t.x(f.at.x);
  const double thick = std::max(t.paper(f.height), 1.0), top = f.at.z / t.scale;
  const Box box{std::max(x - half, 0.0), std::clamp(top - thick, 0.0, t.height),
                std::min(x + half, t.width), std::clamp(top, 0.0, t.height)};
  if (box.empty() || box.bottom >= box.top) return {};
  return {filled(box, 1), outline_of(box, outline_pen)};
}

}  // namespace

Marks fixed_front(const Tank& t) {
  Marks out;
  for (const Furnishing& f : t.in.build.furnishings) {
    if (f.kind == "branch") add(out, branch_front(t, f));
    if (f.kind == "ledge" || f.kind == "feeding-ledge") add(out, ledge_front(t, f));
  }
  return out;
}

Box standing_box(const Tank& t, const Standing& s) {
  return box_around(t, s, t.x(s.at.x), t.width);
}

Marks standing_front(const Tank& t, const Standing& s) {
  return upright_box(standing_box(t, s), t.surface(std::clamp(t.y(s.at.y), 0.0, t.depth)));
}

Marks standing_side(const Tank& t, const Standing& s, double limit) {
  Box box = box_around(t, s, t.y(s.at.y), t.depth - t.background);
  box.top = std::min(box.top, limit);
  if (box.top <= box.bottom) return {};
  return upright_box(box, t.surface(std::clamp(t.y(s.at.y), 0.0, t.depth)));
}

}  // namespace loamsheet
