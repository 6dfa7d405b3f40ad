#include "plan/care/care.h"

#include "plan/care/calendar.h"
#include "plan/care/earlier.h"
#include "plan/care/order.h"

namespace loamsheet {

void add_schedule(const Build& build, Scheduled& plan) {
  plan.order = plan_order(build, plan);
  plan.calendar = plan_calendar(build, plan);
  plan.calendar_before = calendar_before(build, plan);
  plan.cure_days = longest_cure(build);
}

}  // namespace loamsheet
