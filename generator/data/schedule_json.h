// schedule_json: order, calendar and readiness in the numbers.
#pragma once
#include "data/data.h"
#include "data/json.h"

namespace loamsheet {

Json order_json(const PlannedBuild&);
Json calendar_json(const PlannedBuild&);
Json ready_json(const PlannedBuild&);

}  // namespace loamsheet
