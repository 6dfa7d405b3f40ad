#include "plan/earlier.h"

#include "plan/calendar.h"
#include "plan/readiness.h"

namespace loamsheet {
namespace {

// The dates that the slip moved, moved back.
void undo_slip(Identity& id) {
  const bool move_slipped = !id.done_until || (id.moves_on && *id.moves_on > *id.done_until);
  if (id.moves_on && move_slipped) *id.moves_on = plus_days(*id.moves_on, -id.slip);
  if (!id.done_until) id.plant_on = plus_days(id.plant_on, -id.slip);
  id.slip = 0;
}

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

std::vector<CalendarDay> calendar_before(const Build& build, const Plan& plan) {
  if (build.identity.slip == 0 && build.replaced.empty()) return {};
  Build was = build;
  undo_slip(was.identity);
  undo_replacements(was);
  Plan planned = plan;
  planned.ready = plan_ready(was);
  return plan_calendar(was, planned);
}

}  // namespace loamsheet
