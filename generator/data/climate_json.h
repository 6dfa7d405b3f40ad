// climate_json: air and heat, as JSON.
#pragma once
#include "data/json.h"
#include "plan/air/air.h"

namespace loamsheet {

Json air_json(const AirPlan&);
Json heat_json(const HeatPlan&);
Json readings_json(const std::vector<FirstReading>&);

}  // namespace loamsheet
