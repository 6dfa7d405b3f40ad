// calendar: Plan -> iCalendar (RFC 5545), the dates of a build as all-day events.
// Never: a date that is not in the plan, a sentence written in C++.
#pragma once
#include <string>

#include "base/diagnostic.h"
#include "catalogue/wording.h"
#include "check/build.h"
#include "plan/plan.h"

namespace loamsheet {

// The whole file: lines end in CRLF and are folded at 75 octets. `stamp` (seconds since 1970, UTC)
// is when it was made; a task keeps its UID in every revision of a build, and what a revision drops
// of the one before is called off.
Outcome<std::string> make_calendar(const Build&, const Plan&, const Wording&, long long stamp);

}  // namespace loamsheet
