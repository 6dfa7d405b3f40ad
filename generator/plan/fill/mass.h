// mass: what the tank weighs.
#pragma once
#include "check/build.h"
#include "plan/fill/scenario.h"

namespace loamsheet {

// The empty tank: as stated, or floor and walls of an open box, inside measures, nothing taken off
// at the corners.
Kilograms empty_mass(const Enclosure&);

// Empty tank, dry layers, separator and the furnishings, standing or fixed, whose mass is stated.
Kilograms dry_mass(const Build&, const Decisions&, const Scenario&);

// The heaviest the tank is in use: layers at field capacity, `standing` litres in the drainage
// layer, the water area full.
Kilograms wet_mass(const Build&, const Decisions&, const Scenario&, Litres standing);

// As it is moved: the layers at field capacity, no water standing, loose stone taken out.
Kilograms moved_mass(const Build&, const Decisions&, const Scenario&);

// Stones that stand loose, and so are taken out before a move.
bool loose_stone(const Standing&);

}  // namespace loamsheet
