// packs: whole packs from the stock list for what a build needs.
#pragma once
#include <optional>
#include <vector>

#include "check/build.h"
#include "plan/shop/pull_item.h"

namespace loamsheet {

// Fills the packs and prices of the list, in its order; what one item takes is gone for the next.
// The cover is chosen from what is on hand. When that is not enough it is chosen from packs without
// end, and what is missing is noted. Packs without a price are taken only where none has one.
void choose_packs(const Build&, std::vector<PullItem>&);

}  // namespace loamsheet
