// climate_json: air and heat, as JSON.
#pragma once
#include "data/json.h"
#include "plan/climate.h"

namespace loamsheet {

Json air_json(const AirPlan&);
Json heat_json(const HeatPlan&);

}  // namespace loamsheet
