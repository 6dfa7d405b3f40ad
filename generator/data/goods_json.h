// goods_json: the pull list, the quote, and what is marked, cut, dosed, held up and moved.
#pragma once
#include "check/build.h"
#include "data/json.h"
#include "plan/plan.h"

namespace loamsheet {

Json pull_list_json(const Build&, const Plan&);
Json quote_json(const Quote&);
Json mass_json(const MassPlan&);
Json lift_json(const LiftPlan&, const std::optional<SackLift>&);

// Puts the rest under keys of its own; what does not apply is null.
void add_goods_json(const Build&, const Plan&, Json& numbers);

}  // namespace loamsheet
