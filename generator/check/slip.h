// slip: the dates of a build that is late, or early.
#pragma once
#include "check/build.h"

namespace loamsheet {

// Moves what is not yet done by so many days. Without a replacement nothing is known to be done,
// and the planting itself moves; with one, what is dated up to the last of them is done.
void move_dates(Identity&, int days);

}  // namespace loamsheet
