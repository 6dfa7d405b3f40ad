#include "figure/furnishing.h"

#include <algorithm>
#include <cmath>

#include "figure/furnishing_signs.h"

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

}  // namespace

Marks fixed_front(const Tank& t) {
  Marks out;
  for (const Furnishing& f : t.in.build.furnishings) add(out, seen_from_front(t, f));
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
