// floor: the enclosure from above - walls, openings, background, water area, furnishings. Front
// below, back above; the origin is the front left corner of the footprint's box.
#pragma once
#include "figure/tank.h"

namespace loamsheet {

// Walls cut through, and the floor within them.
Marks walls_above(const Tank&);

// The openings along the outside of their walls, and how far they reach beyond the floor.
Drawing openings_above(const Tank&);

// The strip along the back wall, and the water.
Drawing background_above(const Tank&);
Drawing water_above(const Tank&);

// Each furnishing by its outline.
Drawing furnishings_above(const Tank&);

// The lamps that hang over the floor, dashed.
Drawing lamps_above(const Tank&);

}  // namespace loamsheet
