// scale: the preferred scales of ISO 5455:1979, clause 4.
#pragma once
#include <span>

namespace loamsheet {

// Full size and reductions, largest first: 1, 2, 5, 10, ... for 1:1, 1:2, 1:5, 1:10, ...
std::span<const int> preferred_scales();

}  // namespace loamsheet
