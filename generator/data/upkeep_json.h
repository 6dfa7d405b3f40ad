// upkeep_json: packs, lifting, and the water from day to day, as JSON.
#pragma once
#include "data/json.h"
#include "plan/plan.h"

namespace loamsheet {

Json lift_json(const LiftPlan&);

// Adds what the misting comes to, day by day, to the water.
void add_upkeep(const UpkeepPlan&, Json& water);

// Adds the packs of an item of the pull list, their price, and what is short.
void add_packs(const PullItem&, Json& item);

}  // namespace loamsheet
