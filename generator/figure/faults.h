// faults: what a reader would take for a slip of the pen in a figure.
#pragma once
#include <string>
#include <vector>

#include "figure/figure.h"

namespace loamsheet {

// One sentence for each: labels that overlap, leaders that cross, lines through text, text under
// 7 points, marks outside the figure's frame. None in a figure that make_figures gives.
std::vector<std::string> faults(const Figure&);

}  // namespace loamsheet
