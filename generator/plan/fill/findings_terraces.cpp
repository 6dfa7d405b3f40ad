#include <algorithm>
#include <cmath>
#include <numbers>

#include "check/build.h"
#include "plan/fill/constants.h"
#include "plan/fill/fill.h"
#include "plan/fill/ground.h"

namespace loamsheet {
namespace {

// The edge of a terrace: a step of the substrate, of this height, from side to side of the land.
struct Edge {
  const Terrace& terrace;
  Millimetres low, high;  // depths of the substrate on both sides of the edge
  Millimetres span;
};

// How wide the land is at y: the area of a strip there by how deep the strip is.
Millimetres width_at(const Region& land, double y) {
  constexpr double strip = 1;  // mm
  const SquareMetres at = area(below(land, y + strip / 2)) - area(below(land, y - strip / 2));
  return {at.v * 1e6 / strip};
}

std::vector<Edge> edges(const Build& build) {
  const SubstrateLayer& substrate = build.layers.substrate;
  if (substrate.terraces.empty()) return {};
  const Region land = ground(build).land;
  std::vector<Edge> all;
  Millimetres before = substrate.front;
  for (const Terrace& terrace : substrate.terraces) {
    const auto [low, high] = std::minmax(before, terrace.height);
    if (low < high) all.push_back({terrace, low, high, width_at(land, terrace.from.v)});
    before = terrace.height;
  }
  return all;
}

// What a thing takes up along x and along y, turned as it is.
struct Reach {
  Millimetres across, deep;
};

Reach reach(const Furnishing& thing) {
  if (thing.diameter.v > 0) return {thing.diameter, thing.diameter};
  const double turned = thing.turned * std::numbers::pi / 180;
  const double c = std::fabs(std::cos(turned)), s = std::fabs(std::sin(turned));
  return {thing.width * c + thing.depth * s, thing.width * s + thing.depth * c};
}

const Furnishing* holder(const Build& build, const std::string& id) {
  const auto& things = build.furnishings;
  const auto found =
      std::find_if(things.begin(), things.end(), [&](const Furnishing& f) { return f.id == id; });
  return found == things.end() ? nullptr : &*found;
}

// Its foot and its top above the floor: on the base, on the lower substrate, or, of a ledge, where
// it hangs from its top.
Range<Millimetres> upright(const Build& build, const Furnishing& thing, Millimetres ground) {
  const Millimetres top{thing.at.z};
  if (!thing.stands) return {top - thing.height, top};
  const auto& standing = build.standing;
  const bool on_base = std::any_of(standing.begin(), standing.end(), [&](const Standing& s) {
    return s.id == thing.id && s.on_base;
  });
  const Millimetres foot = on_base ? Millimetres{} : ground;
  return {foot, foot + thing.height};
}

Finding about(const Edge& edge, const char* rule) {
  return {Weight::caution,
          rule,
          edge.terrace.where,
          {{"thing", edge.terrace.held_by}, {"from", edge.terrace.from}}};
}

Found held(const Build& build, const Edge& edge, const Furnishing& thing) {
  constexpr Millimetres gap = constants::gap_held;
  Found found;
  const auto add = [&](const char* rule, Millimetres is, Millimetres wanted) {
    found.push_back(about(edge, rule));
    found.back().args.emplace_back("is", is);
    found.back().args.emplace_back("wanted", wanted);
  };
  const Reach size = reach(thing);
  const Millimetres floor = profile(build).drainage_top, ground = floor + edge.low;
  const auto [foot, top] = upright(build, thing, ground);
  if (size.across + gap < edge.span) add("terrace-hold-short", size.across, edge.span);
  if (std::fabs(thing.at.y - edge.terrace.from.v) > size.deep.v / 2 + gap.v) {
    add("terrace-hold-away", {thing.at.y}, edge.terrace.from);
  }
  if (top < floor + edge.high) add("terrace-hold-low", top, floor + edge.high);
  if (foot > ground) add("terrace-hold-open", foot, ground);
  return found;
}

}  // namespace

Found terrace_findings(const Build& build) {
  Found all;
  for (const Edge& edge : edges(build)) {
    const Furnishing* thing = holder(build, edge.terrace.held_by);
    if (thing) {
      append(all, held(build, edge, *thing));
      continue;
    }
    all.push_back(about(edge, "terrace-not-held"));
    all.back().args.emplace_back("step", edge.high - edge.low);
    all.back().args.emplace_back("limit", static_cast<int>(constants::steepest_degrees));
  }
  return all;
}

}  // namespace loamsheet
