// slots: the numbers that a step's sentence may show, by the names of task_slots().
#pragma once
#include <string>
#include <utility>
#include <vector>

#include "check/build.h"
#include "plan/plan.h"

namespace loamsheet {

using SlotArgs = std::vector<std::pair<std::string, FindingArg>>;

// Those that are asked for and that the plan has.
SlotArgs slot_args(const std::vector<std::string>& names, const Build&, const Plan&);

}  // namespace loamsheet
