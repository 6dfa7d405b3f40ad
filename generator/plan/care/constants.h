// constants: the days that work and care keep, each with its origin.
#pragma once
#include "base/units.h"

namespace loamsheet::constants {

// Days after which water that stands in a mist tank is renewed. Common practice.
inline constexpr int stale_after = 14;

// The tank stands empty of animals at least so long after planting or a move. Common practice.
inline constexpr int days_empty = 30;

// A tank that is moved sooner after planting carries plants that have not rooted. Common practice.
inline constexpr int days_before_move = 14;

}  // namespace loamsheet::constants
