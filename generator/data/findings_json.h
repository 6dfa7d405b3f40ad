// findings_json: findings as JSON, for the numbers and for check.
#pragma once
#include "data/data.h"
#include "data/json.h"

namespace loamsheet {

Json findings_array(const PlannedBuild&);

}  // namespace loamsheet
