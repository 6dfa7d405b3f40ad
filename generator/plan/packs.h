// packs: whole packs from the stock list for what a build needs.
#pragma once
#include <optional>
#include <vector>

#include "check/build.h"
#include "plan/plan.h"

namespace loamsheet {

// Packs of one size that may be taken, up to `available`.
struct PackKind {
  double size = 0;
  Money price;
  int available = 0;
};

// How many of each kind cover `need` at the least price; of covers with one price the one with the
// least left over, then the one of fewest packs. Exact. Nothing when all of them are not enough.
std::optional<std::vector<int>> cheapest_cover(double need, const std::vector<PackKind>&);

// Fills the packs and prices of the list, in its order; what one item takes is gone for the next.
// The cover is chosen from what is on hand. When that is not enough it is chosen from packs without
// end, and what is missing is noted. Packs without a price are taken only where none has one.
void choose_packs(const Build&, std::vector<PullItem>&);

}  // namespace loamsheet
