// light_plane: what the light map shows, before anything is drawn.
#pragma once
#include <vector>

#include "figure/contours.h"
#include "figure/tank.h"

namespace loamsheet {

// The upright plane midway between front and back, in paper millimetres from the inside floor at
// the left.
struct LightPlane {
  Samples samples;             // natural logarithms of umol m-2 s-1, above the ground
  double least = 0, most = 0;  // umol m-2 s-1
  Range<double> ground;        // on the ground alone
  Marks things;                // furnishings that the plane cuts
  std::vector<Box> taken;      // by those
};
LightPlane light_plane(const Tank&);

// Round values between two, enough of them to read a slope by: 1, 2, 5, 10, ... or finer.
std::vector<double> light_levels(double least, double most);

}  // namespace loamsheet
