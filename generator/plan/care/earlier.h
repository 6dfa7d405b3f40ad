// earlier: what this revision takes back of the one before.
#pragma once
#include <vector>

#include "check/build.h"
#include "plan/care/care.h"

namespace loamsheet {

// The calendar as it stood before the build's replacements and slip; empty when it has neither.
// The plan's layers and upkeep, counted from planting, are those of both.
std::vector<CalendarDay> calendar_before(const Build&, const Scheduled&);

}  // namespace loamsheet
