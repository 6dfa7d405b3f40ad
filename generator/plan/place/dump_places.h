// placement_dump: where the plants stand, as stable text.
#pragma once
#include <string>

#include "plan/place/planting.h"

namespace loamsheet {

std::string dump(const PlantingPlan&);

}  // namespace loamsheet
