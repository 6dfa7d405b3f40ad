// crown: the leaves of a grown plant as a body that thins the light.
#pragma once
#include "check/climate.h"

namespace loamsheet {

// An ellipsoid as wide as the plant's mature spread and as high as the enclosure lets it grow; it
// hangs from the foot of a trailer. What lies flat on the ground or on a wall casts no shade.
struct Crown {
  Position middle;
  double radius = 0, half_height = 0;  // mm
  bool casts = false;
};

}  // namespace loamsheet
