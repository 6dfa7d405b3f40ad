#include "check/build.h"
#include "plan/care/care.h"
#include "plan/care/constants.h"

namespace loamsheet {
namespace {

bool closed_on(const Build& build, Date date) {
  return build.shop.closed[static_cast<size_t>(weekday(date))];
}

void check_open(const Build& build, Found& found) {
  const Identity& id = build.identity;
  if (closed_on(build, id.plant_on)) {
    found.push_back({Weight::note, "planted-when-closed", id.plant_on_at, {{"date", id.plant_on}}});
  }
  if (condition_holds("moved", build) && closed_on(build, *id.moves_on)) {
    found.push_back({Weight::note, "moved-when-closed", id.moves_on_at, {{"date", *id.moves_on}}});
  }
}

void check_move(const Build& build, Found& found) {
  if (!condition_holds("moved", build)) return;
  const Identity& id = build.identity;
  const int days = days_between(id.plant_on, *id.moves_on);
  if (days >= constants::days_before_move) return;
  found.push_back({Weight::caution,
                   "moved-before-rooted",
                   id.moves_on_at,
                   {{"days", days}, {"least", constants::days_before_move}}});
}

void check_calendar(const Build& build, const Scheduled& plan, Found& found) {
  if (!build.calendar_days || *build.calendar_days >= plan.ready.days) return;
  found.push_back({Weight::note,
                   "calendar-runs-on",
                   build.calendar_days_at,
                   {{"asked", *build.calendar_days}, {"days", plan.ready.days}}});
}

}  // namespace

Found schedule_findings(const Build& build, const Scheduled& plan) {
  Found found;
  check_open(build, found);
  check_move(build, found);
  check_calendar(build, plan, found);
  return found;
}

}  // namespace loamsheet
