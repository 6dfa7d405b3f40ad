// hatch: marks that tell materials apart without colour, cut to a convex region on paper.
#pragma once
#include "figure/sketch.h"

namespace loamsheet {

enum class Texture {
  pebbles,   // granules of a drainage layer
  fibres,    // mixes of fibre and bark
  grains,    // sand
  clay,      // clay and loam
  leaves,    // litter
  diagonal,  // background, solid walls
  posts      // a raised floor on its supports
};

// The same marks for the same region, always. `region` is convex, counter-clockwise, in paper
// millimetres; one thinner than 0.5 mm is left to its tone.
Marks hatch(Texture, const std::vector<Point>& region);

// The part of a segment inside a convex region, counter-clockwise; nothing when it misses.
std::optional<std::pair<Point, Point>> clipped(Point a, Point b, const std::vector<Point>& region);

}  // namespace loamsheet
