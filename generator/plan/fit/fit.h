// fit: who goes with whom - animals with the enclosure, plants with the animals and the build, the
// clean-up crew with the heat and the damp. Rules of a dry build do not fire in a humid one. A
// finding's `source` argument names what the rule and the facts behind it rest on.
#pragma once
#include <set>
#include <string>
#include "base/finding.h"
#include "check/build.h"

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

// Heavy stones that stand on the substrate, over an animal that digs and elsewhere.
Found stone_fit(const Build&);

// Whether a plant of the build fails: a stop or a caution speaks against it, or it has no place.
bool wants_stand_ins(const Found&);

// The habits of the plants that fail; none when one of them has no known habit.
std::set<std::string> habits_that_fail(const Build&, const Found&);

// Gives every finding against a plant its three nearest safe alternatives out of Build::offered:
// those of its habit before others, those in stock first, then by size and need. Safe: nothing but
// notes speaks against it, and the build does not hold it already. False when one has fewer.
bool add_stand_ins(const Build&, Found&);

}  // namespace loamsheet
