// pull_list: how much of what to take from the shelf.
#pragma once
#include <vector>

#include "check/build.h"
#include "plan/plan.h"

namespace loamsheet {

// In the order in which it goes in. Bought volumes; meshes, backgrounds and raised floors by area;
// what comes by the piece by its kind.
std::vector<PullItem> pull_list(const Build&, const Plan&);

// Furnishings and equipment, which a keeper may have already.
bool may_be_there(const PullItem&);

}  // namespace loamsheet
