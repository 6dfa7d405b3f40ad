// fit: who goes with whom - animals with the enclosure, plants with the animals and the build, the
// clean-up crew with the heat and the damp. Rules of a dry build do not fire in a humid one. A
// finding's `source` argument names what the rule and the facts behind it rest on.
#pragma once
#include "plan/findings.h"

namespace loamsheet {

enum class Suits { yes, with_caution, no };

// How a plant suits the animals and the kind of a build.
struct Suitability {
  Suits suits = Suits::yes;  // no: there is a stop among the reasons; with_caution: a caution
  Found reasons;             // what speaks against it, notes too; weightiest first
};

// One plant where the spec puts it; and a plant that may go anywhere in the build, whose reasons
// stand at `where`.
Suitability suitability(const Build&, const PlantUse&);
Suitability suitability(const Build&, const Plant&, const Span& where);

// Of every plant of the build, what is said of one entry once.
Found plant_fit(const Build&);

// Whether the animals have the room that they need grown and in their number, and each other.
Found animal_fit(const Build&);

// What an animal's life needs to stand in the tank: hides, a basking place, a way out of water, a
// place to lay.
Found furniture_fit(const Build&);

// Whether the animals, as small as they are now, and their food insects get out.
Found escape_fit(const Build&);

// Metals, resins, salts and rough stone among the materials.
Found material_fit(const Build&);

Found crew_fit(const Build&);

}  // namespace loamsheet
