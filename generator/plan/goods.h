// goods: what is fetched, cut, dosed, held up, carried and paid for.
#pragma once
#include "check/build.h"
#include "plan/plan.h"
#include "plan/scenario.h"

namespace loamsheet {

// Fills the marks, cuts, supports, doses, pull list, quote, loads and the move of a plan whose
// layers, masses and water are worked out.
void add_goods(const Build&, const Decisions&, Plan&);

}  // namespace loamsheet
