#include "plan/findings.h"

namespace loamsheet {

Found lift_findings(const Build& build, const Plan& plan) {
  if (!plan.lift || (plan.lift->by_hand && plan.lift->people == 1)) return {};
  const bool gear = !plan.lift->by_hand;
  return {
      {gear ? Weight::caution : Weight::note,
       gear ? "lift-too-heavy" : "lift-needs-two",
       build.enclosure.stand_at,
       {{"mass", plan.mass.empty}, {"limit", plan.lift->limit}, {"people", plan.lift->people}}}};
}

}  // namespace loamsheet
