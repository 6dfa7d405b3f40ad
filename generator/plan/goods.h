// goods: what is fetched, cut, dosed, held up, carried and paid for.
#pragma once
#include "check/build.h"
#include "plan/plan.h"
#include "plan/scenario.h"

namespace loamsheet {

// Fills the marks, cuts, supports, doses, loads and the move of a plan whose layers, masses and
// water are worked out.
void add_goods(const Build&, const Decisions&, Plan&);

// Fills the pull list with its packs, the tools, the quote and the heaviest sack, once the order
// and the calendar say what is done.
void add_shopping(const Build&, Plan&);

}  // namespace loamsheet
