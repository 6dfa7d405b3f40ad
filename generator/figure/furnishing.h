// furnishing: things that stand in the layers, as outlines.
#pragma once
#include "figure/tank.h"

namespace loamsheet {

// The outline of a thing: a box as wide as a square of its base. What the layers hide is dashed.
Marks standing_front(const Tank&, const Standing&);
Marks standing_side(const Tank&, const Standing&, double limit);

// Branches and ledges, which are fixed above the ground, in the front view.
Marks fixed_front(const Tank&);

// Its box in the front view.
Box standing_box(const Tank&, const Standing&);

}  // namespace loamsheet
