// upkeep_json: the water from day to day, as JSON.
#pragma once
#include "data/json.h"
#include "plan/plan.h"

namespace loamsheet {

// Adds what the misting comes to, day by day, to the water.
void add_upkeep(const UpkeepPlan&, Json& water);

}  // namespace loamsheet
