// fasteners: what holds the background, the fixed furnishings and the dam, and how much of it.
#pragma once
#include <string>

#include "check/build.h"
#include "plan/fill/water_area.h"

namespace loamsheet {

// Sealant in beads: behind a background that it holds, under each furnishing that it holds, and on
// both sides of the dam's seams.
Litres sealant_needed(const Build&, const std::optional<WaterAreaPlan>&);

// Whole cans of mounting foam, for a background and for furnishings that it holds.
double foam_needed(const Build&);

// Magnets or screws, for a background and for furnishings that they hold.
int pieces_needed(const Build&, const std::string& fixed_by);

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
