// front: the front view.
#include <algorithm>
#include <cmath>

#include "figure/furnishing.h"
#include "figure/opening.h"
#include "figure/plants.h"
#include "figure/tank.h"
#include "figure/words.h"

namespace loamsheet {
namespace {

using Where = Opening::Where;

// Dots of the layers step away from the right wall, so that those of thin layers stay apart.
constexpr double first_dot = 2.6, dot_step = 1.7;  // mm

Marks walls(const Tank& t) {
  const double w = t.wall;
  Marks out = cut_wall({-w, -w, t.width + w, 0});
  const double top = t.height + top_thickness(t);
  add(out, cut_wall_with(t, {-w, 0, 0, top}, openings_at(t, Where::left)));
  add(out, cut_wall_with(t, {t.width, 0, t.width + w, top}, openings_at(t, Where::right)));
  add(out, cut_top(t, {0, t.width}, false));
  return out;
}

// Upright edges of the footprint that are seen from the front: those of a hexagon, say.
Marks edges(const Tank& t) {
  Marks out;
  const Region& r = t.in.build.enclosure.footprint;
  const Box box = extent(r);
  for (const Vertex& v : r.corners) {
    const auto reach = reach_at(r, v.at.x);
    const bool side = v.at.x < box.left + 1 || v.at.x > box.right - 1;
    if (side || !reach || v.at.y > reach->low.v + 0.5) continue;
    out.push_back(line({t.x(v.at.x), 0}, {t.x(v.at.x), t.height}, pen::narrow));
  }
  return out;
}

// Behind the front edge the surface climbs to its level at the back.
Marks rising_surface(const Tank& t) {
  if (t.litter_back <= t.litter_front) return {};
  const LabelLimits& x = t.land;
  Marks out{filled({x.bottom, t.litter_front, x.top, t.litter_back}, 0.96)};
  out.push_back(line({x.bottom, t.litter_back}, {x.top, t.litter_back}, pen::narrow));
  for (const Terrace& terrace : t.in.build.layers.substrate.terraces) {
    const double top = t.surface(t.y(terrace.from.v));
    out.push_back(line({x.bottom, top}, {x.top, top}, pen::narrow));
  }
  return out;
}

Marks standing_water(const Tank& t) {
  const double high = t.standing_high, low = t.standing_low;
  if (high <= 0) return {};
  const LabelLimits& x = t.land;
  Marks out = water_level(high, x, x.bottom + (x.top - x.bottom) * 0.2);
  if (low > 0 && high - low > 1) {
    out.push_back(line({x.bottom, low}, {x.top, low}, pen::hidden));
  }
  return out;
}

// The highest water level: across the drainage, and where a tape goes outside.
Marks highest_water(const Tank& t) {
  const double level = t.highest;
  if (level <= 0) return {};
  const double out_left = -t.wall, tape = 2.2;
  return {line({t.land.bottom, level}, {t.land.top, level}, pen::chain),
          filled({out_left - tape, level - 0.35, out_left - 0.2, level + 0.35}, 0)};
}

Marks layers(const Tank& t) {
  const LabelLimits& x = t.land;
  Marks out = rising_surface(t);
  add(out, cut_drainage(t, x));
  add(out, cut_substrate(t, {x, t.substrate_front, t.substrate_front}));
  add(out, cut_litter(t, {x, t.substrate_front, t.substrate_front},
                      {x, t.litter_front, t.litter_front}));
  add(out, standing_water(t));
  add(out, highest_water(t));
  add(out, separator(t, x));
  return out;
}

Marks water_area(const Tank& t) {
  const auto& area = t.in.build.water_area;
  if (!area) return {};
  const bool left = area->side == WaterArea::Side::left;
  const LabelLimits x = left ? LabelLimits{0, t.land.bottom} : LabelLimits{t.land.top, t.width};
  const double shore = left ? x.top : x.bottom, level = t.paper(area->depth);
  Marks out{filled({x.bottom, 0, x.top, level}, 0.88)};
  add(out, water_level(level, x, (x.bottom + x.top) / 2));
  out.push_back(line({shore, 0}, {shore, std::max(t.litter_front, level)}, pen::wide));
  return out;
}

Marks seen_openings(const Tank& t) {
  Marks out;
  for (const Opening* o : openings_at(t, Where::back)) {
    const LabelLimits up = rise(t, *o);
    out.push_back(outline_of({0, up.bottom, t.width, up.top}, pen::hidden));
  }
  for (const Opening* o : openings_at(t, Where::front)) {
    add(out, seen_opening(t, *o, {0, t.width}));
  }
  return out;
}

// Gives a label its place.
void aim(Drawing& d, Target target, Point at) {
  target.at = at;
  d.targets.push_back(std::move(target));
}

// The middle of the widest part of the drainage that no water line crosses.
double free_drainage(const Tank& t) {
  std::vector<double> lines{0, t.drainage};
  for (double level : {t.standing_high, t.highest}) {
    lines.push_back(std::clamp(level, 0.0, t.drainage));
  }
  std::sort(lines.begin(), lines.end());
  double best = 0, middle = 0;
  for (size_t i = 0; i + 1 < lines.size(); ++i) {
    if (lines[i + 1] - lines[i] <= best) continue;
    best = lines[i + 1] - lines[i];
    middle = (lines[i] + lines[i + 1]) / 2;
  }
  return middle;
}

void aim_at_water(Drawing& d, const Tank& t) {
  const double x = t.land.top - first_dot;
  if (t.highest > 0) aim(d, highest_label(t.in), {x - 3 * dot_step, t.highest});
  if (t.standing_high > 0) {
    aim(d, standing_water_label(t.in), {x - 4 * dot_step, t.standing_high});
  }
}

void aim_at_layers(Drawing& d, const Tank& t) {
  const Layers& l = t.in.build.layers;
  const double x = t.land.top - first_dot;
  if (l.litter) aim(d, litter_label(t.in), {x, (t.substrate_front + t.litter_front) / 2});
  aim(d, substrate_label(t.in), {x - dot_step, (t.drainage + t.substrate_front) / 2});
  if (l.separator) aim(d, separator_label(t.in), {x - 2 * dot_step, t.drainage});
  aim_at_water(d, t);
  if (t.drainage > 0) aim(d, drainage_label(t.in), {x - 5 * dot_step, free_drainage(t)});
}

Point opening_anchor(const Tank& t, const Opening& o) {
  const LabelLimits up = rise(t, o);
  const double middle = (up.bottom + up.top) / 2, wall = t.wall / 2;
  if (o.at == Where::top) {
    const LabelLimits x = top_reach(t, o, false);
    return {std::max((x.bottom + x.top) / 2, x.top - 6), t.height + top_thickness(t) / 2};
  }
  if (o.at == Where::left) return {-wall, middle};
  if (o.at == Where::right) return {t.width + wall, middle};
  if (o.kind->swings) return {t.width - door_inset, up.bottom + (up.top - up.bottom) * 0.75};
  return {t.width - first_dot, middle};
}

// Moved up or down as little as keeps it off the heights of the other dots.
Point apart(Point at, const std::vector<Target>& others) {
  const auto taken = [&](double y) {
    const auto near = [&](const Target& o) { return std::fabs(o.at.y - y) < 0.6; };
    return std::any_of(others.begin(), others.end(), near);
  };
  double off = 0;
  while (taken(at.y + off)) off = off > 0 ? -off : 0.3 - off;
  return {at.x, at.y + off};
}

void aim_at_fittings(Drawing& d, const Tank& t) {
  for (const Opening& o : t.in.build.enclosure.openings) {
    aim(d, opening_label(t.in, o), apart(opening_anchor(t, o), d.targets));
  }
  for (const Standing& s : t.in.build.standing) {
    const Box box = standing_box(t, s);
    const Point at{box.right - std::min(1.0, box.width() / 2), box.bottom + box.height() * 0.8};
    aim(d, standing_label(t.in, s), apart(at, d.targets));
  }
  if (t.in.build.enclosure.background) {
    const Point at{t.width - 8, t.litter_back + (t.height - t.litter_back) * 0.45};
    aim(d, background_label(t.in), apart(at, d.targets));
  }
  if (t.in.build.water_area) {
    const bool left = t.in.build.water_area->side == WaterArea::Side::left;
    const double x = left ? t.land.bottom / 2 : (t.land.top + t.width) / 2;
    aim(d, water_area_label(t.in),
        apart({x, t.paper(t.in.build.water_area->depth) * 0.6}, d.targets));
  }
}

}  // namespace

Drawing front_view(const Tank& t, Naming naming) {
  Drawing d;
  d.marks = layers(t);
  add(d.marks, water_area(t));
  for (const Standing& s : t.in.build.standing) add(d.marks, standing_front(t, s));
  add(d.marks, fixed_front(t));
  add(d.marks, plants_front(t).marks);
  add(d.marks, edges(t));
  add(d.marks, seen_openings(t));
  add(d.marks, walls(t));
  aim_at_layers(d, t);
  if (naming != Naming::layers_only) aim_at_fittings(d, t);
  if (naming == Naming::full) return d;
  for (Target& target : d.targets) target.detail.clear();
  return d;
}

}  // namespace loamsheet
