// calendar: what is done on which day, by the care rules.
#pragma once
#include <optional>
#include <vector>

#include "check/build.h"
#include "plan/care/care.h"

namespace loamsheet {

// The days on which there is something to do, from the first of the lead-up to the animal's
// earliest day or as long as was asked for. Work that may move keeps clear of closed days: what
// comes before planting, move or readiness is done earlier, the rest later, within its window.
// The plan's readiness, layers and upkeep are worked out before.
std::vector<CalendarDay> plan_calendar(const Build&, const Scheduled&);

// The last day of the calendar and of what is worked out day by day.
int last_day(const Build&, const Ready&);

// The day nearest to `day`, first later and then earlier (or first earlier), from `low` to `high`,
// on which the shop is open; `day` itself when there is none.
struct Window {
  int low, high;
};
int open_day(const Build&, int day, const Window&, bool earlier_first);

// The days on which the tasks of the lead-up are done, by position in Build::rules.care; nothing
// for those that do not apply. A task comes late enough for those it waits for.
std::vector<std::optional<int>> lead_up_days(const Build&);

// Days that what cures longest is left to: the longest gap before a task of the lead-up that is
// done only where something cures. 0 where nothing does.
int longest_cure(const Build&);

// A rule's amount on a day. False: there is nothing to do on that day.
bool fill_amount(const Build&, const Scheduled&, int day, CalendarTask& task);

}  // namespace loamsheet
