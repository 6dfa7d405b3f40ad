// fasteners: what holds the background, the fixed furnishings and the dam, and how much of it.
#pragma once
#include "check/build.h"
#include "plan/fill/water_area.h"

namespace loamsheet {

// How much of a fixing is needed, in its unit: for a background and for furnishings that it holds
// and, of what seals, on both sides of the dam's seams.
double fixing_needed(const FixingKind&, const Build&, const std::optional<WaterAreaPlan>&);

// Whether the background is held by what has to cure.
bool background_cures(const Build&);

// Whether a furnishing is held up by a fixing. A basking spot of which neither mass nor fixing is
// stated is a place on another thing.
bool is_held_up(const Furnishing&);

// Whether a furnishing is held by what has to cure.
bool bonded(const Furnishing&);

// Whether anything does: the background, a furnishing or the dam of a water area.
bool anything_cures(const Build&);

// The area of the back that a background covers.
SquareMetres background_area(const Enclosure&);

}  // namespace loamsheet
