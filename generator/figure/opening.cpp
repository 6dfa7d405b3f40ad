#include "figure/opening.h"

#include <algorithm>
#include <cmath>

namespace loamsheet {
namespace {

constexpr double least_strip = 0.9;  // mm: a lower vent would not be seen
const Pen door_pen{0.25, 0, {}};

double wall_length(const Tank& t, Opening::Where at) {
  const bool across = at == Opening::Where::front || at == Opening::Where::back;
  return (across ? t.width : t.depth) * t.scale;
}

Mark dashes(const Opening& o, Point a, Point b) {
  return line(a, b, o.kind->swings ? door_pen : o.mesh ? pen::mesh : pen::hidden);
}

// Short strokes across a strip of mesh.
Marks ticks(const Box& strip) {
  Marks out;
  for (double x = strip.left + 1.4; x < strip.right - 0.2; x += 1.4) {
    out.push_back(line({x, strip.bottom}, {x, strip.top}, pen::hatch));
  }
  return out;
}

// A door leaf with its handle side marked.
Marks door(const Box& leaf) {
  Marks out{outline_of(leaf, door_pen)};
  const double x = (leaf.left + leaf.right) / 2;
  out.push_back(line({x, leaf.bottom}, {x, leaf.top}, door_pen));
  return out;
}

}  // namespace

double top_thickness(const Tank& t) {
  return std::min(t.wall, 1.0);
}

LabelLimits rise(const Tank& t, const Opening& o) {
  const double low = o.lower_edge ? t.paper(*o.lower_edge) : 0;
  if (o.kind->swings) return {low, t.height - door_inset};
  const double strip = o.gross.v * 1e6 / wall_length(t, o.at) / t.scale;
  return {low, std::min(low + std::max(strip, least_strip), t.height)};
}

std::vector<const Opening*> openings_at(const Tank& t, Opening::Where at) {
  std::vector<const Opening*> out;
  for (const Opening& o : t.in.build.enclosure.openings) {
    if (o.at == at) out.push_back(&o);
  }
  const auto lower = [&](const Opening* a, const Opening* b) {
    return rise(t, *a).bottom < rise(t, *b).bottom;
  };
  std::stable_sort(out.begin(), out.end(), lower);
  return out;
}

Marks cut_wall_with(const Tank& t, const Box& box, const std::vector<const Opening*>& openings) {
  Marks out, open;
  double from = box.bottom;
  const double x = (box.left + box.right) / 2;
  for (const Opening* o : openings) {
    const LabelLimits gap = rise(t, *o);
    const double top = std::min(gap.top, box.top), bottom = std::max(from, gap.bottom);
    if (bottom >= top) continue;
    if (bottom > from) add(out, cut_wall({box.left, from, box.right, bottom}));
    open.push_back(dashes(*o, {x, bottom}, {x, top}));
    from = top;
  }
  if (from < box.top) add(out, cut_wall({box.left, from, box.right, box.top}));
  add(out, std::move(open));
  return out;
}

LabelLimits top_reach(const Tank& t, const Opening& o, bool side) {
  const double all = side ? t.depth : t.width;
  if (!o.over) return {0, all};
  const LabelLimits part = side ? LabelLimits{t.y(o.over->bottom), t.y(o.over->top)}
                                : LabelLimits{t.x(o.over->left), t.x(o.over->right)};
  return {std::clamp(part.bottom, 0.0, all), std::clamp(part.top, 0.0, all)};
}

Marks cut_top(const Tank& t, const LabelLimits& along, bool side) {
  struct Part {
    LabelLimits reach;
    const Opening* opening;
  };
  std::vector<Part> parts;
  for (const Opening* o : openings_at(t, Opening::Where::top)) {
    parts.push_back({top_reach(t, *o, side), o});
  }
  const auto first = [](const Part& a, const Part& b) { return a.reach.bottom < b.reach.bottom; };
  std::stable_sort(parts.begin(), parts.end(), first);
  Marks out;
  double from = along.bottom;
  const double y = t.height, thick = top_thickness(t);
  for (const Part& p : parts) {
    if (p.reach.bottom > from) add(out, cut_wall({from, y, p.reach.bottom, y + thick}));
    out.push_back(
        dashes(*p.opening, {p.reach.bottom, y + thick / 2}, {p.reach.top, y + thick / 2}));
    from = std::max(from, p.reach.top);
  }
  if (from < along.top) add(out, cut_wall({from, y, along.top, y + thick}));
  return out;
}

Marks seen_opening(const Tank& t, const Opening& o, const LabelLimits& along) {
  const LabelLimits up = rise(t, o);
  if (o.kind->swings)
    return door({along.bottom + door_inset, up.bottom, along.top - door_inset, up.top});
  const Box strip{along.bottom, up.bottom, along.top, up.top};
  Marks out{filled(strip, 1), outline_of(strip, door_pen)};
  if (o.mesh) add(out, ticks(strip));
  return out;
}

}  // namespace loamsheet
