#include "plan/fill/fill.h"

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
  return drainage.kind->keeps_water_off ? drainage.depth : Millimetres{};
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
  if (thing.kind->footprint != FurnishingKind::Footprint::lying) return volume(thing.base, up_to);
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

Millimetres depth_at(const Build& build, Point p, IntervalAt layer_at) {
  const Interval layer = layer_at(build, p);
  return layer.top - layer.bottom;
}

// On terraces the layers are level from one edge to the next: a strip of the region at a time.
Litres in_steps(const Build& build, const Region& region, IntervalAt layer_at) {
  const Box box = extent(region);
  Litres sum{};
  double from = box.bottom;
  const auto strip_to = [&](double to) {
    if (to <= from) return;
    const SquareMetres strip = area(below(region, to)) - area(below(region, from));
    sum += volume(strip, depth_at(build, {box.left, (from + to) / 2}, layer_at));
    from = to;
  };
  for (const Terrace& terrace : build.layers.substrate.terraces) {
    strip_to(std::min(terrace.from.v, box.top));
  }
  strip_to(box.top);
  return sum;
}

// Bounded by planes: the area times the depth at the centroid.
Litres filled(const Build& build, const Region& region, IntervalAt layer_at) {
  if (area(region).v <= 0) return {};
  const Litres room = build.layers.substrate.terraces.empty()
                          ? volume(area(region), depth_at(build, centroid(region), layer_at))
                          : in_steps(build, region, layer_at);
  return room - displaced(build, region, layer_at);
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
  if (layer.kind->on_supports) return {amount, amount, {}, {}};
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

Litres pockets(const Build& build) {
  Litres sum{};
  for (const Furnishing& thing : build.furnishings) sum += thing.pocket;
  return sum;
}

SubstratePlan plan_substrate(const Build& build, const Region& land) {
  const SubstrateLayer& layer = build.layers.substrate;
  SubstratePlan plan;
  plan.volume = filled(build, land, substrate_at);
  plan.buy = with_reserve(plan.volume * (1 + layer.settling.v), layer.hold_back);
  plan.pockets = pockets(build);
  plan.blend = plan.buy + plan.pockets * (1 + layer.settling.v);
  for (const SubstratePart& part : layer.parts) {
    const Litres amount = plan.volume * part.share.v;
    const Range<Kilograms> dry = weighed(amount, part.bulk.dry_density);
    plan.parts.push_back({part.bulk.material, amount, plan.buy * part.share.v, dry});
    plan.dry.low += dry.low;
    plan.dry.high += dry.high;
  }
  return plan;
}

MossPlan plan_moss(const MossLayer& layer, const Region& land) {
  MossPlan plan;
  const SquareMetres wanted = layer.area.value_or(area(land) * layer.floor.value_or(Fraction{}).v);
  plan.area = std::min(wanted, area(land));
  plan.volume = volume(plan.area, layer.depth);
  plan.dry = weighed(plan.volume, layer.bulk.dry_density);
  return plan;
}

// The share of the land that moss leaves to the litter.
double left_bare(const std::optional<MossPlan>& moss, const Region& land) {
  return moss && area(land).v > 0 ? 1 - moss->area / area(land) : 1;
}

Millimetres on_terraces(const SubstrateLayer& layer, double y) {
  Millimetres depth = layer.front;
  for (const Terrace& terrace : layer.terraces) {
    if (y >= terrace.from.v) depth = terrace.height;
  }
  return depth;
}

LitterPlan plan_litter(const Build& build, const Region& land, double share) {
  const Litres amount = filled(build, land, litter_at) * share;
  return {amount, with_reserve(amount, build.layers.litter_hold_back),
          weighed(amount, build.layers.litter->bulk.dry_density)};
}

}  // namespace

Millimetres deepest(const SubstrateLayer& layer) {
  Millimetres most = std::max(layer.front, layer.back);
  for (const Terrace& terrace : layer.terraces) most = std::max(most, terrace.height);
  return most;
}

Profile profile(const Build& build) {
  const SubstrateLayer& substrate = build.layers.substrate;
  Profile p;
  p.drainage_top = drainage_depth(build);
  p.substrate_front = p.drainage_top + substrate.front;
  p.substrate_back = p.drainage_top + substrate.back;
  p.litter_front = p.substrate_front + litter_depth(build);
  p.litter_back = p.substrate_back + litter_depth(build);
  const Millimetres moss = build.layers.moss ? build.layers.moss->depth : Millimetres{};
  const Millimetres cover = std::max(litter_depth(build), moss);
  p.highest = p.drainage_top + deepest(substrate) + cover;
  return p;
}

Millimetres substrate_depth(const Build& build, double y) {
  const SubstrateLayer& substrate = build.layers.substrate;
  if (!substrate.terraces.empty()) return on_terraces(substrate, y);
  const Box box = extent(build.enclosure.footprint);
  return substrate.front + (substrate.back - substrate.front) * ((y - box.bottom) / box.height());
}

LayersPlan plan_layers(const Build& build, const Ground& ground) {
  LayersPlan plan;
  if (build.layers.drainage.kind->keeps_water_off) {
    plan.drainage = plan_drainage(build, ground.land);
  }
  if (build.layers.separator) plan.separator = plan_separator(build, *build.layers.separator);
  plan.substrate = plan_substrate(build, ground.land);
  if (build.layers.moss) plan.moss = plan_moss(*build.layers.moss, ground.land);
  if (build.layers.litter) {
    plan.litter = plan_litter(build, ground.land, left_bare(plan.moss, ground.land));
  }
  plan.profile = profile(build);
  return plan;
}

Litres water_in_area(const Build& build, const Ground& ground) {
  return build.water_area ? filled(build, ground.water, water_at) : Litres{};
}

}  // namespace loamsheet
