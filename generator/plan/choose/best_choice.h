// best_choice: the best set of plants out of many, exactly - by number first, then by worth, then
// by price.
#pragma once
#include <optional>
#include <vector>

#include "base/money.h"

namespace loamsheet {

// A species that may be taken, up to as often as it has prices.
struct Pickable {
  int role = 0;  // offers of one role stand together, and in it those of one kind of leaf
  int leaf = 0;
  long worth = 0;            // millionths, of the first; negative: taken only to make up the number
  std::vector<Money> price;  // of so many more: price[0] is that of one
};

// What it is worth to have a role filled, and how many plants in it are enough: each beyond them
// takes something off, and so does each species beyond the first of one kind of leaf.
struct RoleWorth {
  long filled = 0, crowded = 0;  // millionths
  int enough = 1;
  long alike = 0;  // millionths
};

struct Wish {
  int count = 1;
  std::optional<Money> budget;
};

// How many of each offer. A second plant of a species is worth half of the first, a third a
// quarter, and so on. Of equal sets one, whatever the order of reading was, for offers stand in a
// fixed order.
std::vector<int> best_choice(const std::vector<Pickable>&, const std::vector<RoleWorth>&,
                             const Wish&);

}  // namespace loamsheet
