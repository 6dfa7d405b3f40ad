// ground: the floor of the tank divided into what the layers lie on, the water area and the strip
// behind the background.
#pragma once
#include "base/geometry.h"
#include "check/build.h"

namespace loamsheet {

struct Ground {
  Region land;   // where the layers lie
  Region water;  // the water area; no corners when there is none
};

// The background takes a strip of its thickness along the back of the footprint's box. The water
// area is cut off straight at its side, so that it takes its share of the whole inside floor.
Ground ground(const Build&);

// The mean length of the background along the back: the strip's area over its thickness. Zero
// when there is no background.
Millimetres background_length(const Enclosure&);

}  // namespace loamsheet
