#include "plan/shop/shop.h"

#include "plan/shop/packs.h"
#include "plan/shop/supplies.h"

namespace loamsheet {

void add_shopping(const Build& build, Shopped& plan) {
  plan.lift = plan_lift(build, plan.mass.empty);
  plan.pull_list = pull_list(build, plan);
  plan.tools = tools_among(build, task_needs(build, plan));
  choose_packs(build, plan.pull_list);
  plan.quote = plan_quote(build, plan.pull_list);
  plan.sack = plan_sack(build, plan.pull_list);
}

}  // namespace loamsheet
