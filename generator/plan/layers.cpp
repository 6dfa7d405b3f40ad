#include "plan/layers.h"

#include <algorithm>
#include <cmath>
#include <numbers>

namespace loamsheet {
namespace {

// A layer's top and bottom above the floor at one place.
struct Interval {
  Millimetres bottom, top;
};

Millimetres drainage_depth(const Build& build) {
  const DrainageLayer& drainage = build.layers.drainage;
  return drainage.kind == DrainageKind::none ? Millimetres{} : drainage.depth;
}

Millimetres litter_depth(const Build& build) {
  return build.layers.litter ? build.layers.litter->depth : Millimetres{};
}

Interval drainage_at(const Build& build, Point) {
  return {Millimetres{}, drainage_depth(build)};
}

Interval substrate_at(const Build& build, Point p) {
  const Millimetres bottom = drainage_depth(build);
  return {bottom, bottom + substrate_depth(build, p.y)};
}

Interval litter_at(const Build& build, Point p) {
  const Millimetres bottom = substrate_at(build, p).top;
  return {bottom, bottom + litter_depth(build)};
}

Interval water_at(const Build& build, Point) {
  return {Millimetres{}, build.water_area->depth};
}

using IntervalAt = Interval (*)(const Build&, Point);

// The share of a circle's area that lies below a level, given as a share of its diameter.
double circle_below(double level) {
  const double angle = 2 * std::acos(1 - 2 * std::clamp(level, 0.0, 1.0));
  return (angle - std::sin(angle)) / (2 * std::numbers::pi);
}

// What a thing on the base takes up below a level: an upright prism, or a tube on its side, whose
// base is its length by its diameter.
Litres taken_below(const Standing& thing, Millimetres level) {
  const Millimetres up_to = std::min(thing.height, std::max(level, Millimetres{}));
  if (!thing.tube) return volume(thing.base, up_to);
  if (thing.filled || thing.height.v <= 0) return {};
  const double of_box = std::numbers::pi / 4 * circle_below(up_to / thing.height);
  return volume(thing.base, thing.height) * of_box;
}

// The room that furnishings standing on the base take up in a layer over `region`. A sloped top is
// taken at the furnishing's centre.
Litres displaced(const Build& build, const Region& region, IntervalAt layer_at) {
  Litres sum{};
  for (const Standing& thing : build.standing) {
    if (!thing.on_base || !contains(region, thing.at)) continue;
    const Interval layer = layer_at(build, thing.at);
    sum += taken_below(thing, layer.top) - taken_below(thing, layer.bottom);
  }
  return sum;
}

// Bounded by planes: the area times the depth at the centroid.
Litres filled(const Build& build, const Region& region, IntervalAt layer_at) {
  if (area(region).v <= 0) return {};
  const Interval layer = layer_at(build, centroid(region));
  return volume(area(region), layer.top - layer.bottom) - displaced(build, region, layer_at);
}

Range<Kilograms> weighed(Litres amount, const Range<KilogramsPerCubicMetre>& density) {
  return {mass(amount, density.low), mass(amount, density.high)};
}

Litres with_reserve(Litres amount, Fraction hold_back) {
  return amount * (1 + hold_back.v);
}

DrainagePlan plan_drainage(const Build& build, const Region& land) {
  const DrainageLayer& layer = build.layers.drainage;
  const Litres amount = filled(build, land, drainage_at);
  if (layer.kind == DrainageKind::raised_floor) return {amount, amount, {}, {}};
  return {amount, amount * layer.bulk.voids.v,
          with_reserve(amount, build.layers.drainage_hold_back),
          weighed(amount, layer.bulk.dry_density)};
}

SeparatorPlan plan_separator(const Build& build, const SeparatorLayer& layer) {
  const Box box = extent(build.enclosure.footprint);
  const Millimetres width = Millimetres{box.width()} + 2 * layer.turn_up;
  const Millimetres depth = Millimetres{box.height()} + 2 * layer.turn_up;
  return {{width.v * depth.v / 1e6}, width, depth};
}

SubstratePlan plan_substrate(const Build& build, const Region& land) {
  const SubstrateLayer& layer = build.layers.substrate;
  SubstratePlan plan;
  plan.volume = filled(build, land, substrate_at);
  plan.buy = with_reserve(plan.volume * (1 + layer.settling.v), layer.hold_back);
  for (const SubstratePart& part : layer.parts) {
    const Litres amount = plan.volume * part.share.v;
    const Range<Kilograms> dry = weighed(amount, part.bulk.dry_density);
    plan.parts.push_back({part.bulk.material, amount, plan.buy * part.share.v, dry});
    plan.dry.low += dry.low;
    plan.dry.high += dry.high;
  }
  return plan;
}

LitterPlan plan_litter(const Build& build, const Region& land) {
  const Litres amount = filled(build, land, litter_at);
  return {amount, with_reserve(amount, build.layers.litter_hold_back),
          weighed(amount, build.layers.litter->bulk.dry_density)};
}

}  // namespace

Profile profile(const Build& build) {
  const SubstrateLayer& substrate = build.layers.substrate;
  Profile p;
  p.drainage_top = drainage_depth(build);
  p.substrate_front = p.drainage_top + substrate.front;
  p.substrate_back = p.drainage_top + substrate.back;
  p.litter_front = p.substrate_front + litter_depth(build);
  p.litter_back = p.substrate_back + litter_depth(build);
  return p;
}

Millimetres substrate_depth(const Build& build, double y) {
  const SubstrateLayer& substrate = build.layers.substrate;
  const Box box = extent(build.enclosure.footprint);
  return substrate.front + (substrate.back - substrate.front) * ((y - box.bottom) / box.height());
}

LayersPlan plan_layers(const Build& build, const Ground& ground) {
  LayersPlan plan;
  if (build.layers.drainage.kind != DrainageKind::none) {
    plan.drainage = plan_drainage(build, ground.land);
  }
  if (build.layers.separator) plan.separator = plan_separator(build, *build.layers.separator);
  plan.substrate = plan_substrate(build, ground.land);
  if (build.layers.litter) plan.litter = plan_litter(build, ground.land);
  plan.profile = profile(build);
  return plan;
}

Litres water_in_area(const Build& build, const Ground& ground) {
  return build.water_area ? filled(build, ground.water, water_at) : Litres{};
}

}  // namespace loamsheet
