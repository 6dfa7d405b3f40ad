// stand_ins: what could go in instead of a plant that fails.
#pragma once
#include <vector>

#include "check/build.h"
#include "plan/plan.h"

namespace loamsheet {

// Whether a plant of the build fails: a stop or a caution speaks against it, or it has no place.
bool wants_stand_ins(const Plan&);

// Gives every finding against a plant its three nearest safe alternatives out of Build::offered, by
// habit, size and need; those in stock first. Safe: nothing but notes speaks against it, and the
// build does not hold it already.
void add_stand_ins(const Build&, Plan&);

}  // namespace loamsheet
