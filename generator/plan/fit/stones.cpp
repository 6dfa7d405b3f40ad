#include <algorithm>

#include "plan/fit/body.h"
#include "plan/fit/constants.h"
#include "plan/fit/fit.h"

namespace loamsheet {

// A stone that is undermined falls on who digs under it: a stop when it is heavy; of a lighter one
// the rules of the animal's fit speak.
Found stone_fit(const Build& build) {
  Found found;
  const bool dug = std::any_of(build.kept.begin(), build.kept.end(), digs);
  const Kilograms limit = dug ? constants::heavy_stone_digging : constants::heavy_stone;
  for (const Standing& thing : build.standing) {
    const bool loose = thing.kind->loose_weight && !thing.on_base && thing.mass;
    if (!loose || *thing.mass < limit) continue;
    found.push_back({dug ? Weight::stop : Weight::caution,
                     dug ? "stone-over-digger" : "stone-on-substrate",
                     thing.where,
                     {{"thing", thing.id}, {"mass", *thing.mass}, {"limit", limit}}});
  }
  return found;
}

}  // namespace loamsheet
