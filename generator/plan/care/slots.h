// slots: the numbers that a step's sentence may show, by the names of task_slots().
#pragma once
#include <string>
#include <utility>
#include <vector>

#include "check/build.h"
#include "plan/care/care.h"

namespace loamsheet {

// Those that are asked for and that the plan has.
Args slot_args(const std::vector<std::string>& names, const Build&, const Planted&);

}  // namespace loamsheet
