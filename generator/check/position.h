// position: whether places of the spec are inside the tank.
#pragma once
#include <string>
#include <string_view>

#include "base/geometry.h"
#include "check/checking.h"

namespace loamsheet {

// Reports the place under `key` of a node, if it has one and it is not over the tank's floor or,
// with a third coordinate, not between its floor and its top. `what` names the thing.
void check_position(Checking&, const Node&, const std::string& key, const std::string& what);

// The place under `key`, its origin where there is none.
Position position_of(const Node&, std::string_view key);

}  // namespace loamsheet
