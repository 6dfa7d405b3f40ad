// at_home: how far the climate that a build's animals are kept in is that of a plant.
#pragma once
#include "check/build.h"

namespace loamsheet {

// From 0, no place for it to live long, to 1: by warmth, by the damp of the air and by
// that of the ground. What nobody
// knows speaks neither for a plant nor against it.
double at_home(const Build&, const Plant&);

}  // namespace loamsheet
