// obstacles: the furnishings as solids that let no light through.
#pragma once
#include <vector>

#include "check/build.h"

namespace loamsheet {

// An upright box of space, millimetres.
struct Space {
  Position low, high;
};

// A box that stands upright and may be turned, or a rod.
struct Solid {
  bool rod = false;
  Position middle;              // of a box
  double half[3] = {0, 0, 0};   // of a box: along, across, up
  double cosine = 1, sine = 0;  // of the angle by which a box is turned to the left
  Position from, to;            // ends of a rod
  double radius = 0;            // of a rod
  Space around;
};

// What furnishings whose size is stated take up. Bare places, such as a basking spot, take none.
std::vector<Solid> solids_in(const Build&);

// Whether a place lies in a solid or on its surface, to a millimetre.
bool holds(const Solid&, const Position&);

// A place as seen from the middle of a box, along its own sides.
Position seen_from(const Solid& box, const Position&);

// The height of what one would rest on at a place seen from above: the top of a solid there, or the
// ground.
Millimetres resting_height(const Build&, const std::vector<Solid>&, Point);

}  // namespace loamsheet
