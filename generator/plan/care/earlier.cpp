#include "plan/care/earlier.h"

#include "check/slip.h"
#include "plan/care/calendar.h"
#include "plan/care/readiness.h"

namespace loamsheet {
namespace {

void undo_replacements(Build& build) {
  build.replaced.clear();
  build.identity.done_until.reset();
  for (PlantUse& use : build.plants) {
    if (!use.before) continue;
    use.facts = use.before->facts, use.ppfd = use.before->ppfd;
    use.before.reset(), use.replaced_on.reset();
  }
}

}  // namespace

std::vector<CalendarDay> calendar_before(const Build& build, const Scheduled& plan) {
  if (build.identity.slip == 0 && build.replaced.empty()) return {};
  Build was = build;
  move_dates(was.identity, -was.identity.slip);
  was.identity.slip = 0;
  undo_replacements(was);
  Scheduled planned = plan;
  planned.ready = plan_ready(was);
  return plan_calendar(was, planned);
}

}  // namespace loamsheet
