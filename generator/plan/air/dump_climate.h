// dump_climate: air and heat as stable text.
#pragma once
#include <string>

#include "plan/air/air.h"

namespace loamsheet {

std::string dump(const AirPlan&);
std::string dump(const HeatPlan&);

}  // namespace loamsheet
