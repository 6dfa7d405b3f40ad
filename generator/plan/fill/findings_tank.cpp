#include "check/build.h"
#include "plan/fill/constants.h"
#include "plan/fill/fill.h"

namespace loamsheet {
namespace {

Found stand(const Build& build, const Filling& plan) {
  if (!build.enclosure.stand_rating) {
    Finding unrated{Weight::note, "no-stand-rating", build.enclosure.stand_at, {}};
    unrated.args.emplace_back("wet", plan.mass.wet);
    return {std::move(unrated)};
  }
  const Kilograms rating = *build.enclosure.stand_rating, left = plan.mass.stand_margin->low;
  if (left >= rating * constants::stand_reserve.v) return {};
  const bool overloaded = left.v < 0;
  return {{overloaded ? Weight::stop : Weight::caution,
           overloaded ? "stand-overloaded" : "stand-margin-thin",
           build.enclosure.stand_at,
           {{"wet", plan.mass.wet}, {"rating", rating}, {"reserve", constants::stand_reserve}}}};
}

Found port_in_toughened_base(const Build& build) {
  const DrainageLayer& drainage = build.layers.drainage;
  const bool port = drainage.kind->keeps_water_off && drainage.outlet->through_base;
  if (!port || !build.enclosure.walls.toughened_base) return {};
  return {{Weight::stop, "port-in-toughened-base", drainage.depth_at, {}}};
}

}  // namespace

Found tank_findings(const Build& build, const Filling& plan) {
  Found all = stand(build, plan);
  for (Finding& finding : port_in_toughened_base(build)) all.push_back(std::move(finding));
  return all;
}

}  // namespace loamsheet
