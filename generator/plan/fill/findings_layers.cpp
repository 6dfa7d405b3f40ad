#include <algorithm>
#include <cmath>
#include <numbers>

#include "check/build.h"
#include "plan/fill/constants.h"
#include "plan/fill/fill.h"

namespace loamsheet {
namespace {

constexpr double hair = 1e-6;  // mm: less than any measure, more than rounding

bool water_at(const Build& build, Opening::Where wall) {
  if (!build.water_area) return false;
  const bool left = build.water_area->side == WaterArea::Side::left;
  return wall == (left ? Opening::Where::left : Opening::Where::right);
}

// Moss may lie at any wall.
Millimetres moss(const Build& build) {
  return build.layers.moss ? build.layers.moss->depth : Millimetres{};
}

// The top of what lies against a wall: the highest along it.
Millimetres height_at(const Build& build, const Filling& plan, Opening::Where wall) {
  if (water_at(build, wall)) return build.water_area->depth;
  const Profile& p = plan.layers.profile;
  if (wall == Opening::Where::front)
    return std::max(p.litter_front, p.substrate_front + moss(build));
  if (wall == Opening::Where::back) return std::max(p.litter_back, p.substrate_back + moss(build));
  return p.highest;
}

Found above_sill(const Build& build, const Filling& plan) {
  Found found;
  for (const Opening& opening : build.enclosure.openings) {
    if (!opening.lower_edge) continue;
    const Millimetres top = height_at(build, plan, opening.at);
    if (top.v <= opening.lower_edge->v + hair) continue;
    const bool water = water_at(build, opening.at);
    found.push_back({Weight::stop,
                     water ? "water-above-sill" : "layers-above-sill",
                     opening.where,
                     {{"opening", opening.name},
                      {"top", top},
                      {"edge", *opening.lower_edge},
                      {"over", top - *opening.lower_edge}}});
  }
  return found;
}

Found fill_enclosure(const Build& build, const Filling& plan) {
  const Millimetres top = plan.layers.profile.highest, height = build.enclosure.height;
  const Millimetres free = height - top;
  if (free >= height * constants::free_height.v) return {};
  return {{Weight::caution,
           "layers-fill-enclosure",
           build.enclosure.height_at,
           {{"top", top}, {"height", height}, {"free", free}}}};
}

Found steep(const Build& build) {
  const SubstrateLayer& substrate = build.layers.substrate;
  if (!substrate.terraces.empty()) return {};  // level, and held at every edge
  const double run = extent(build.enclosure.footprint).height();
  const double rise = std::fabs(substrate.back.v - substrate.front.v);
  const double degrees = std::atan2(rise, run) * 180 / std::numbers::pi;
  if (degrees <= constants::steepest_degrees) return {};
  return {{Weight::caution,
           "substrate-steep",
           substrate.back_at,
           {{"slope", static_cast<int>(std::lround(degrees))},
            {"limit", static_cast<int>(constants::steepest_degrees)}}}};
}

Found no_room(const Build& build, const Filling& plan) {
  const bool drainage = plan.layers.drainage && plan.layers.drainage->volume.v <= 0;
  if (!drainage && plan.layers.substrate.volume.v > 0) return {};
  return {{Weight::stop, "no-room-for-layers", build.layers.substrate.front_at, {}}};
}

// What has no mass is missing from the masses.
Found mass_not_stated(const Build& build) {
  Found found;
  for (const Standing& thing : build.standing) {
    if (thing.mass) continue;
    found.push_back({Weight::note, "mass-not-stated", thing.where, {{"thing", thing.id}}});
  }
  return found;
}

}  // namespace

Found layer_findings(const Build& build, const Filling& plan) {
  Found all;
  for (const Found& found :
       {above_sill(build, plan), fill_enclosure(build, plan), steep(build), terrace_findings(build),
        no_room(build, plan), mass_not_stated(build)}) {
    all.insert(all.end(), found.begin(), found.end());
  }
  return all;
}

}  // namespace loamsheet
