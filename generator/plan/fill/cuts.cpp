#include <algorithm>
#include <cmath>

#include "check/build.h"
#include "plan/fill/constants.h"
#include "plan/fill/cuts.h"
#include "plan/fill/ground.h"
#include "plan/fill/quantities.h"
#include "plan/fill/water_area.h"

namespace loamsheet {
namespace {

// A piece wider than the roll both ways is joined from strips along its longer side, as few as the
// roll allows, all of one width.
Cut separator_cut(const SeparatorLayer& layer, const SeparatorPlan& plan) {
  const Millimetres roll = layer.roll_width.value_or(constants::usual_roll);
  const Millimetres narrow = std::min(plan.cut_width, plan.cut_depth);
  Cut cut{"separator", layer.material, 1, plan.cut_width, plan.cut_depth, {}};
  if (narrow <= roll) return cut;
  const Millimetres lap = constants::strip_overlap;
  cut.count = static_cast<int>(std::ceil((narrow - lap) / (roll - lap)));
  cut.overlap = lap;
  const Millimetres strip = (narrow + (cut.count - 1) * lap) / cut.count;
  (plan.cut_width < plan.cut_depth ? cut.width : cut.depth) = strip;
  return cut;
}

Cut raised_floor_cut(const Build& build) {
  const Box box = extent(ground(build).land);
  const std::string item(build.layers.drainage.kind->item);
  return {"drainage", item, 1, {box.width()}, {box.height()}, {}};
}

}  // namespace

std::vector<Cut> plan_cuts(const Build& build, const LayersPlan& layers,
                           const std::optional<WaterAreaPlan>& water) {
  std::vector<Cut> cuts;
  const Enclosure& tank = build.enclosure;
  if (tank.background) {
    cuts.push_back(
        {"background", tank.background->material, 1, background_length(tank), tank.height, {}});
  }
  if (build.layers.drainage.kind->on_supports) {
    cuts.push_back(raised_floor_cut(build));
  }
  if (water) {
    const std::string& panel = build.water_area->dam.material;
    cuts.push_back({"dam", panel, 1, water->dam_length, water->dam_height, {}});
  }
  if (layers.separator) cuts.push_back(separator_cut(*build.layers.separator, *layers.separator));
  return cuts;
}

SquareMetres cut_area(const std::vector<Cut>& cuts, const std::string& use) {
  double sum = 0;
  for (const Cut& cut : cuts) {
    if (cut.use == use) sum += cut.count * cut.width.v * cut.depth.v / 1e6;
  }
  return {sum};
}

}  // namespace loamsheet
