#include "figure/floor.h"

#include <algorithm>
#include <cmath>
#include <map>

#include "figure/hatch.h"
#include "figure/plants.h"
#include "figure/words.h"

namespace loamsheet {
namespace {

using Where = Opening::Where;
using Points = std::vector<Point>;

constexpr double sag = 0.02;                         // mm on paper, of arcs as points
constexpr double first_mark = 0.8, next_mark = 1.3;  // mm, from the wall to an opening's mark
constexpr double facing = 0.7;                       // cosine: an edge that faces that way
constexpr double water_tone = 0.86, wall_tone = 0.15;
constexpr double default_across = 60;  // mm: a lamp whose size is not stated

// The inside outline, front left at the origin, counter-clockwise.
Points floor_points(const Tank& t) {
  Points points = outline(t.in.build.enclosure.footprint, sag * t.scale);
  for (Point& p : points) p = {t.x(p.x), t.y(p.y)};
  return points;
}

Point outward(Point from, Point to) {
  const double length = std::hypot(to.x - from.x, to.y - from.y);
  if (length == 0) return {};
  return {(to.y - from.y) / length, -(to.x - from.x) / length};
}

// The outline moved out by a distance, corners mitred.
Points moved_out(const Points& points, double by) {
  Points out;
  const size_t n = points.size();
  for (size_t i = 0; i < n; ++i) {
    const Point a = outward(points[(i + n - 1) % n], points[i]);
    const Point b = outward(points[i], points[(i + 1) % n]);
    const double share = by / std::max(0.3, 1 + a.x * b.x + a.y * b.y);
    out.push_back({points[i].x + (a.x + b.x) * share, points[i].y + (a.y + b.y) * share});
  }
  return out;
}

Point direction(Where at) {
  switch (at) {
    case Where::front:
      return {0, -1};
    case Where::back:
      return {0, 1};
    case Where::left:
      return {-1, 0};
    case Where::right:
      return {1, 0};
    case Where::top:
      break;
  }
  return {};
}

// The longest run of the outline that faces a way, moved out.
Points facing_run(const Points& floor, Where at, double by) {
  const Points moved = moved_out(floor, by);
  const Point way = direction(at);
  const size_t n = floor.size();
  Points best, run;
  for (size_t k = 0; k < 2 * n; ++k) {
    const size_t i = k % n, j = (k + 1) % n;
    const Point out = outward(floor[i], floor[j]);
    if (out.x * way.x + out.y * way.y < facing) {
      run.clear();
      continue;
    }
    if (run.empty()) run.push_back(moved[i]);
    if (run.size() <= n) run.push_back(moved[j]);
    if (run.size() > best.size()) best = run;
  }
  return best;
}

// The part of a polygon with y >= limit.
Points above(const Points& points, double limit) {
  Points out;
  for (size_t i = 0; i < points.size(); ++i) {
    const Point a = points[i], b = points[(i + 1) % points.size()];
    if (a.y >= limit) out.push_back(a);
    if ((a.y >= limit) == (b.y >= limit)) continue;
    out.push_back({a.x + (b.x - a.x) * (limit - a.y) / (b.y - a.y), limit});
  }
  return out;
}

bool is_convex(const Points& points) {
  const size_t n = points.size();
  for (size_t i = 0; i < n; ++i) {
    const Point a = outward(points[i], points[(i + 1) % n]);
    const Point b = points[(i + 2) % n], at = points[(i + 1) % n];
    if ((b.x - at.x) * a.x + (b.y - at.y) * a.y > 1e-6) return false;
  }
  return n > 2;
}

void aim(Drawing& d, Target target, Point at) {
  target.at = at;
  d.targets.push_back(std::move(target));
}

Pen opening_pen(const Opening& o) {
  return o.kind->swings ? Pen{0.35, 0, {}} : o.mesh ? pen::mesh : pen::hidden;
}

// The right end of a line, a little way in.
Point right_end(const Points& line) {
  const auto further = [](Point a, Point b) { return a.x < b.x; };
  const Point right = *std::max_element(line.begin(), line.end(), further);
  const Point left = *std::min_element(line.begin(), line.end(), further);
  return right.x - left.x < 3 ? Point{(left.x + right.x) / 2, (line.front().y + line.back().y) / 2}
                              : right;
}

bool is_cone(const Lamp& lamp) {
  return lamp.kind->sign == LampKind::Sign::cone;
}

Points lamp_points(const Tank& t, const Lamp& lamp) {
  const Point middle{t.x(lamp.at.x), t.y(lamp.at.y)};
  const auto half = [&](Millimetres v) { return (v.v > 0 ? v.v : default_across) / 2 / t.scale; };
  if (is_cone(lamp)) return circle_points(middle, half({}));
  const double x = half(lamp.length), y = half(lamp.width);
  return rectangle_points({middle.x - x, middle.y - y, middle.x + x, middle.y + y});
}

}  // namespace

Marks walls_above(const Tank& t) {
  const Points floor = floor_points(t), outer = moved_out(floor, t.wall);
  return {Filled{outer, wall_tone}, Filled{floor, 1}};
}

Drawing openings_above(const Tank& t) {
  Drawing d;
  const Points floor = floor_points(t);
  std::map<Where, int> rows;
  for (const Opening& o : t.in.build.enclosure.openings) {
    if (o.at == Where::top) continue;
    const double away = t.wall + first_mark + next_mark * rows[o.at]++;
    Points run = facing_run(floor, o.at, away);
    if (run.size() < 2) continue;
    aim(d, opening_label(t.in, o), right_end(run));
    d.marks.push_back(Stroke{std::move(run), false, opening_pen(o)});
  }
  return d;
}

Drawing background_above(const Tank& t) {
  Drawing d;
  if (t.background <= 0) return d;
  Points strip = above(floor_points(t), t.depth - t.background);
  if (strip.size() < 3) return d;
  d.marks.push_back(Filled{strip, 0.95});
  if (is_convex(strip)) add(d.marks, hatch(Texture::diagonal, strip));
  d.marks.push_back(Stroke{strip, true, pen::thin});
  const Box box = extent(d.marks);
  aim(d, background_label(t.in), {box.right - 1.2, box.top - t.background / 2});
  return d;
}

Drawing water_above(const Tank& t) {
  Drawing d;
  const auto& area = t.in.build.water_area;
  if (!area) return d;
  const bool left = area->side == WaterArea::Side::left;
  const Region& floor = t.in.build.enclosure.footprint;
  const double shore = left ? t.land.bottom : t.land.top;
  const double real = shore * t.scale + extent(floor).left;
  Points wet = outline(left ? left_of(floor, real) : right_of(floor, real), sag * t.scale);
  for (Point& p : wet) p = {t.x(p.x), t.y(p.y)};
  if (wet.size() < 3) return d;
  d.marks = {Filled{wet, water_tone}, Stroke{wet, true, pen::thin}};
  const Box box = extent(d.marks);
  aim(d, water_area_label(t.in), {(box.left + box.right) / 2, box.bottom + box.height() * 0.6});
  return d;
}

Drawing lamps_above(const Tank& t) {
  Drawing d;
  for (const Lamp& lamp : t.in.build.lamps) {
    Points points = lamp_points(t, lamp);
    for (Point& p : points) p = {std::clamp(p.x, 0.0, t.width), std::clamp(p.y, 0.0, t.depth)};
    const Box box = extent(Marks{Stroke{points, true, pen::hidden}});
    aim(d, lamp_label(t.in, lamp), {box.right - pen::hidden.width, (box.bottom + box.top) / 2});
    d.targets.back().slack = is_cone(lamp) ? 0 : box.height() * 0.45;
    d.marks.push_back(Stroke{std::move(points), true, pen::hidden});
  }
  return d;
}

}  // namespace loamsheet
