// stand_ins: what could go in instead of a plant that fails.
#pragma once
#include <set>
#include <string>

#include "check/build.h"
#include "plan/plan.h"

namespace loamsheet {

// Whether a plant of the build fails: a stop or a caution speaks against it, or it has no place.
bool wants_stand_ins(const Plan&);

// The habits of the plants that fail; none when one of them has no known habit.
std::set<std::string> habits_that_fail(const Build&, const Plan&);

// Gives every finding against a plant its three nearest safe alternatives out of Build::offered:
// those of its habit before others, those in stock first, then by size and need. Safe: nothing but
// notes speaks against it, and the build does not hold it already. False when one has fewer.
bool add_stand_ins(const Build&, Plan&);

}  // namespace loamsheet
