// opening: lids, vents and doors in the two views. A vent is drawn at its lower edge as a strip of
// its area along its wall, since the spec states no more; a door reaches from its lower edge to
// the top.
#pragma once
#include "figure/tank.h"

namespace loamsheet {

inline constexpr double door_inset = 1.2;  // mm from the walls to a door's leaf

// The top's thickness as drawn.
double top_thickness(const Tank&);

// Where an opening lies on its wall, as heights above the floor on paper.
LabelLimits rise(const Tank&, const Opening&);

// Openings of one wall.
std::vector<const Opening*> openings_at(const Tank&, Opening::Where);

// A side wall cut through, `box` without its openings; these as dashes or thin outlines.
Marks cut_wall_with(const Tank&, const Box&, const std::vector<const Opening*>&);

// The top along x (front view) or y (side section), with its openings.
Marks cut_top(const Tank&, const LabelLimits& along, bool side);

// An opening of a wall that is looked at, `along` the wall.
Marks seen_opening(const Tank&, const Opening&, const LabelLimits& along);

// Where a top opening lies along x (front view) or y (side section).
LabelLimits top_reach(const Tank&, const Opening&, bool side);

}  // namespace loamsheet
