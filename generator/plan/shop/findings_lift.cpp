#include "check/build.h"
#include "plan/shop/shop.h"

namespace loamsheet {

Found sack_findings(const Build& build, const Shopped& plan) {
  if (!plan.sack || plan.sack->people == 1) return {};
  return {
      {Weight::note,
       "sack-heavy",
       build.stock_at,
       {{"material", plan.sack->item}, {"mass", plan.sack->mass}, {"limit", plan.sack->limit}}}};
}

Found lift_findings(const Build& build, const Shopped& plan) {
  if (!plan.lift || (plan.lift->by_hand && plan.lift->people == 1)) return {};
  const bool gear = !plan.lift->by_hand;
  return {
      {gear ? Weight::caution : Weight::note,
       gear ? "lift-too-heavy" : "lift-needs-two",
       build.enclosure.stand_at,
       {{"mass", plan.mass.empty}, {"limit", plan.lift->limit}, {"people", plan.lift->people}}}};
}

}  // namespace loamsheet
