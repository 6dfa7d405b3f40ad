// dump_goods: marks, cuts, doses, loads, the move and the quote as stable text.
#pragma once
#include <string>

#include "plan/plan.h"

namespace loamsheet {

std::string dump_goods(const Plan&);

}  // namespace loamsheet
