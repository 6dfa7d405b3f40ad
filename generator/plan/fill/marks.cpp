#include "plan/fill/marks.h"
#include "check/build.h"
#include "plan/fill/quantities.h"

namespace loamsheet {

std::vector<TapeMark> plan_marks(const Build& build, const LayersPlan& layers,
                                 const WaterPlan& water) {
  const Millimetres base = build.enclosure.walls.thickness;
  std::vector<TapeMark> marks;
  const auto add = [&](const char* layer, Millimetres front, Millimetres back) {
    marks.push_back({layer, base + front, base + back, {}});
  };
  const Profile& p = layers.profile;
  if (water.highest_standing) add("waterline", *water.highest_standing, *water.highest_standing);
  if (layers.drainage) add("drainage", p.drainage_top, p.drainage_top);
  add("substrate", p.substrate_front, p.substrate_back);
  for (const Terrace& terrace : build.layers.substrate.terraces) {
    add("terrace", p.drainage_top + terrace.height, p.drainage_top + terrace.height);
    marks.back().from = terrace.from;
  }
  if (layers.litter) add("litter", p.litter_front, p.litter_back);
  if (build.water_area) add("water", build.water_area->depth, build.water_area->depth);
  return marks;
}

}  // namespace loamsheet
