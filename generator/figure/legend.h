// legend: what the signs of the plan view mean.
#pragma once
#include "figure/sketch.h"

namespace loamsheet {

struct LegendInput {
  const FigureInput& in;
  double size;   // points
  double width;  // mm: rows wrap within
};

// Only the signs that the view shows; from the origin to the right and downwards.
Marks plan_legend(const LegendInput&);

}  // namespace loamsheet
