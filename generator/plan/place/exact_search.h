// placement_exact: a few plants placed anew in the best of all ways, the others staying.
#pragma once
#include <vector>

#include "plan/place/state.h"

namespace loamsheet {

// How far the search goes: no more than so many of each plant's best free sites, and no more than
// so many steps.
struct Effort {
  size_t sites = 0;
  long steps = 0;
};

// Changes the state for the better if it can; true when it did.
bool place_best(const PlacementTask&, PlacementState&, const std::vector<size_t>& plants,
                const Effort&);

}  // namespace loamsheet
