// placement_bound: what no placement can score more than.
#pragma once
#include "plan/place/task.h"

namespace loamsheet {

// Space is cut into cells so small that no two movable plants fit into one. Each plant is worth at
// most its best spot of a cell, and each cell holds one: the best assignment of plants to cells is
// the bound. Shade only takes away, so leaving it out keeps the bound. Exact assignment by shortest
// paths (Kuhn 1955; Jonker and Volgenant 1987).
long placement_bound(const PlacementTask&);

}  // namespace loamsheet
