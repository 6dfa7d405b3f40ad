// pull_list: how much of what to take from the shelf.
#pragma once
#include <string>
#include <vector>

#include "check/build.h"
#include "plan/plan.h"

namespace loamsheet {

// In the order in which it goes in, then what the tasks need besides. Bought volumes; meshes, moss,
// backgrounds and raised floors by area; what comes by the piece by its kind. The planting, the
// order and the calendar are planned before.
std::vector<PullItem> pull_list(const Build&, const Plan&);

// The item that a lamp is: "lamp-bar".
std::string lamp_item(const Lamp&);

// Furnishings, equipment, water and supplies, which a keeper or the bench may have already.
bool may_be_there(const PullItem&);

}  // namespace loamsheet
