// fixing: what holds the background, the fixed furnishings and the dam, and how much of it.
#pragma once
#include "check/build.h"
#include "plan/plan.h"

namespace loamsheet {

// Sealant in beads: behind a background that it holds, under each furnishing that it holds, and on
// both sides of the dam's seams.
Litres sealant_needed(const Build&, const Plan&);

// Whole cans of mounting foam, for a background that it holds.
double foam_needed(const Build&);

// Whether the background is held by what has to cure.
bool background_cures(const Build&);

// The area of the back that a background covers.
SquareMetres background_area(const Enclosure&);

}  // namespace loamsheet
