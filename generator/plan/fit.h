// fit: who goes with whom - animals with the enclosure, plants with the animals and the build, the
// clean-up crew with the heat and the damp. Rules of a dry build do not fire in a humid one.
#pragma once
#include "plan/findings.h"

namespace loamsheet {

// Whether the animals have the room that they need grown, and each other.
Found animal_fit(const Build&);

// Hazards weighed by what the animals eat and by their skin; sturdiness against their wear; what
// the plants' roots and leaves want against the kind of build.
Found plant_fit(const Build&);

Found crew_fit(const Build&);

}  // namespace loamsheet
