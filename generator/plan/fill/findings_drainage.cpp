#include "check/build.h"
#include "plan/fill/constants.h"
#include "plan/fill/fill.h"

namespace loamsheet {
namespace {

bool damp_kind(BuildKind kind) {
  return kind == BuildKind::humid || kind == BuildKind::temperate;
}

Found missing(const Build& build) {
  const DrainageLayer& layer = build.layers.drainage;
  if (build.kind != BuildKind::humid || layer.kind->keeps_water_off) return {};
  return {{Weight::caution, "drainage-missing", layer.depth_at, {}}};
}

Found not_wanted(const Build& build) {
  const DrainageLayer& layer = build.layers.drainage;
  if (!is_dry(build.kind) || !layer.kind->keeps_water_off) return {};
  return {{Weight::caution, "drainage-not-wanted", layer.depth_at, {{"depth", layer.depth}}}};
}

Found too_shallow(const Build& build) {
  const DrainageLayer& layer = build.layers.drainage;
  if (!damp_kind(build.kind) || !layer.kind->poured) return {};
  if (layer.depth >= constants::shallow_drainage) return {};
  return {{Weight::caution,
           "drainage-too-shallow",
           layer.depth_at,
           {{"depth", layer.depth}, {"least", constants::shallow_drainage}}}};
}

Found outlet_missing(const Build& build) {
  const DrainageLayer& layer = build.layers.drainage;
  const bool drains = build.kind == BuildKind::humid && layer.kind->keeps_water_off;
  if (!drains || layer.outlet->draws) return {};
  return {{Weight::note, "outlet-missing", layer.depth_at, {}}};
}

Found heavy(const Build& build, const Filling& plan) {
  const DrainageLayer& layer = build.layers.drainage;
  if (!layer.kind->poured || !plan.layers.drainage->dry) return {};
  if (layer.bulk.dry_density.high < constants::heavy_granules) return {};
  return {{Weight::note, "heavy-granules", layer.depth_at, {{"mass", *plan.layers.drainage->dry}}}};
}

Found standing_high(const Build& build, const Filling& plan) {
  if (!plan.water.standing) return {};
  const Millimetres highest = *plan.water.highest_standing, level = plan.water.standing->high;
  if (level < constants::high_water && level <= highest) return {};
  return {{Weight::caution,
           "standing-water-high",
           build.layers.drainage.depth_at,
           {{"standing", *plan.water.standing}, {"highest", highest}}}};
}

}  // namespace

Found drainage_findings(const Build& build, const Filling& plan) {
  Found all;
  for (const Found& found :
       {missing(build), not_wanted(build), too_shallow(build), outlet_missing(build),
        heavy(build, plan), standing_high(build, plan)}) {
    all.insert(all.end(), found.begin(), found.end());
  }
  return all;
}

}  // namespace loamsheet
