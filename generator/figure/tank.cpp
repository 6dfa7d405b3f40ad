#include "figure/tank.h"

#include <algorithm>

#include "plan/fill/fill.h"

namespace loamsheet {
namespace {

LabelLimits land_of(const Tank& t) {
  const auto& water = t.in.build.water_area;
  if (!water) return {0, t.width};
  const double wet = water->floor.v * t.width;
  return water->side == WaterArea::Side::left ? LabelLimits{wet, t.width}
                                              : LabelLimits{0, t.width - wet};
}

void set_levels(Tank& t) {
  const Profile& p = t.in.plan.layers.profile;
  t.drainage = t.paper(p.drainage_top);
  t.substrate_front = t.paper(p.substrate_front);
  t.substrate_back = t.paper(p.substrate_back);
  t.litter_front = t.paper(p.litter_front);
  t.litter_back = t.paper(p.litter_back);
  if (t.drainage <= 0) return;
  const WaterPlan& water = t.in.plan.water;
  if (water.standing) {
    t.standing_low = t.paper(water.standing->low);
    t.standing_high = t.paper(water.standing->high);
  }
  if (water.highest_standing) t.highest = t.paper(*water.highest_standing);
}

}  // namespace

double Tank::x(double real) const {
  return (real - extent(in.build.enclosure.footprint).left) / scale;
}

double Tank::y(double real) const {
  return (real - extent(in.build.enclosure.footprint).bottom) / scale;
}

double Tank::surface(double at) const {
  const double real = at * scale + extent(in.build.enclosure.footprint).bottom;
  return drainage + paper(substrate_depth(in.build, real)) + litter_front - substrate_front;
}

Tank tank_at(const FigureInput& in, int scale) {
  const Enclosure& e = in.build.enclosure;
  const Box box = extent(e.footprint);
  Tank t(in, scale);
  t.width = box.width() / scale;
  t.depth = box.height() / scale;
  t.height = t.paper(e.height);
  t.wall = std::max(t.paper(e.walls.thickness), pen::wide.width);
  t.background = e.background ? t.paper(e.background->thickness) : 0;
  t.land = land_of(t);
  set_levels(t);
  return t;
}

}  // namespace loamsheet
