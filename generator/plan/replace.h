// replace: what took the place of plants that died, from the second revision on.
#pragma once
#include <vector>

#include "check/build.h"

namespace loamsheet {

// Makes Build::replaced part of the plants: each keeps its number and remembers what stood there
// first. Plants are to be numbered already.
void put_replacements(Build&);

// The days on which plants were replaced, counted from planting, each once, in order.
std::vector<int> replacement_days(const Build&);

}  // namespace loamsheet
