// section: the side section, front at the left.
#include <algorithm>

#include "figure/furnishing.h"
#include "figure/hatch.h"
#include "figure/opening.h"
#include "figure/tank.h"

namespace loamsheet {
namespace {

using Where = Opening::Where;

// Height on the slope at a place between front and back.
double on(double front, double back, const Tank& t, double at) {
  return front + (back - front) * at / t.depth;
}

// Substrate and litter in one piece, or terrace by terrace.
std::vector<Slope> slopes(const Tank& t, const LabelLimits& y) {
  const SubstrateLayer& s = t.in.build.layers.substrate;
  if (s.terraces.empty()) {
    return {{y, t.substrate_front, on(t.substrate_front, t.substrate_back, t, y.top)}};
  }
  std::vector<Slope> all;
  double from = y.bottom, top = t.substrate_front;
  for (const Terrace& terrace : s.terraces) {
    const double edge = std::min(t.y(terrace.from.v), y.top);
    if (edge > from) all.push_back({{from, edge}, top, top});
    from = std::max(from, edge), top = t.drainage + t.paper(terrace.height);
  }
  if (y.top > from) all.push_back({{from, y.top}, top, top});
  return all;
}

Marks layers(const Tank& t) {
  const LabelLimits y{0, t.depth - t.background};
  const double litter = t.litter_front - t.substrate_front;
  Marks out = cut_drainage(t, y);
  for (const Slope& substrate : slopes(t, y)) {
    add(out, cut_substrate(t, substrate));
    add(out, cut_litter(t, substrate,
                        {substrate.along, substrate.left + litter, substrate.right + litter}));
  }
  if (t.standing_high > 0) add(out, water_level(t.standing_high, y, y.top * 0.3));
  add(out, separator(t, y));
  return out;
}

Marks background(const Tank& t, double limit) {
  if (t.background <= 0) return {};
  const Box strip{t.depth - t.background, 0, t.depth, limit};
  Marks out{filled(strip, 0.97)};
  if (t.background >= 0.8) add(out, hatch(Texture::diagonal, rectangle_points(strip)));
  out.push_back(line({strip.left, 0}, {strip.left, limit}, pen::thin));
  return out;
}

// A long break after ISO 128: a narrow line with two zigzags.
Marks break_line(const Tank& t, double y) {
  const double left = -t.wall - 2, right = t.depth + t.wall + 2;
  Stroke stroke{{{left, y}}, false, pen::narrow};
  for (double share : {0.3, 0.7}) {
    const double x = left + (right - left) * share;
    for (Point p : {Point{-1.0, 0}, Point{-0.5, 1.3}, Point{0.5, -1.3}, Point{1.0, 0}}) {
      stroke.points.push_back({x + p.x, y + p.y});
    }
  }
  stroke.points.push_back({right, y});
  return {stroke};
}

Marks far_vents(const Tank& t, double limit) {
  Marks out;
  for (const Opening* o : openings_at(t, Where::left)) {
    if (rise(t, *o).top <= limit) add(out, seen_opening(t, *o, {0, t.depth - t.background}));
  }
  return out;
}

Marks walls(const Tank& t, double limit) {
  const double w = t.wall, d = t.depth;
  Marks out = cut_wall({-w, -w, d + w, 0});
  const double top = limit < t.height ? limit : t.height + top_thickness(t);
  add(out, cut_wall_with(t, {-w, 0, 0, top}, openings_at(t, Where::front)));
  add(out, cut_wall_with(t, {d, 0, d + w, top}, openings_at(t, Where::back)));
  add(out, limit < t.height ? break_line(t, limit) : cut_top(t, {0, d}, true));
  return out;
}

}  // namespace

Marks side_section(const Tank& t, double limit) {
  Marks out = far_vents(t, limit);
  add(out, background(t, limit));
  add(out, layers(t));
  for (const Standing& s : t.in.build.standing) add(out, standing_side(t, s, limit));
  add(out, walls(t, limit));
  return out;
}

}  // namespace loamsheet
