// cheapest_cover: the whole packs that cover a need at the least price.
#pragma once
#include <optional>
#include <vector>

#include "base/money.h"

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

}  // namespace loamsheet
