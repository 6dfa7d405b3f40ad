#include "plan/pull_list.h"

#include "plan/ground.h"

namespace loamsheet {
namespace {

PullItem sheet_of(const std::string& use, const std::string& material, SquareMetres need) {
  return {use, material, need.v, "m2", {}, {}};
}

PullItem bulk_of(const std::string& use, const std::string& material, Litres need) {
  return {use, material, need.v, "L", {}, {}};
}

SquareMetres background_area(const Enclosure& enclosure) {
  return {background_length(enclosure).v * enclosure.height.v / 1e6};
}

}  // namespace

std::vector<PullItem> pull_list(const Build& build, const LayersPlan& plan) {
  std::vector<PullItem> list;
  const Enclosure& enclosure = build.enclosure;
  if (enclosure.background) {
    list.push_back(
        sheet_of("background", enclosure.background->material, background_area(enclosure)));
  }
  if (plan.drainage && plan.drainage->buy) {
    list.push_back(bulk_of("drainage", build.layers.drainage.bulk.material, *plan.drainage->buy));
  }
  if (plan.drainage && build.layers.drainage.kind == DrainageKind::raised_floor) {
    list.push_back(sheet_of("drainage", "raised-floor",
                            {plan.drainage->volume / volume({1}, build.layers.drainage.depth)}));
  }
  if (plan.separator) {
    list.push_back(sheet_of("separator", build.layers.separator->material, plan.separator->area));
  }
  for (const PartPlan& part : plan.substrate.parts) {
    list.push_back(bulk_of("substrate", part.material, part.buy));
  }
  if (plan.litter)
    list.push_back(bulk_of("litter", build.layers.litter->bulk.material, plan.litter->buy));
  return list;
}

}  // namespace loamsheet
