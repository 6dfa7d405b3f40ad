// furnishing_signs: how each kind of furnishing is drawn.
#pragma once
#include "figure/tank.h"

namespace loamsheet {

Marks seen_from_above(const Tank&, const Furnishing&);

// Of a thing fixed above the ground; what stands is drawn by its outline (figure/furnishing.h).
Marks seen_from_front(const Tank&, const Furnishing&);

}  // namespace loamsheet
