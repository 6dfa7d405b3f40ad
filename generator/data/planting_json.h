// planting_json: the plants' places with their reasons in words, and how good the placement is.
#pragma once
#include "catalogue/wording.h"
#include "data/json.h"
#include "plan/choose/choose.h"
#include "plan/place/place.h"

namespace loamsheet {

Json plants_json(const PlantingPlan&, const Wording&);
Json selections_json(const std::vector<Selection>&, const Wording&);
Json replaced_json(const Build&);
Json placement_json(const PlantingPlan&);

}  // namespace loamsheet
