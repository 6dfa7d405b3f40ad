// water: the first watering, and where it stands afterwards.
#pragma once
#include <optional>

#include "check/build.h"
#include "plan/fill/scenario.h"

namespace loamsheet {

// An arid build is planted into a dry substrate and is not watered through.
bool watered_through(const Build&);

// What the substrate takes up from its moisture as placed to field capacity. A part that was placed
// wetter than that takes up nothing.
Litres field_capacity_deficit(const Build&, const Decisions&, const Scenario&);

// The water that runs through to the drainage layer: none without a drainage layer.
Litres run_through(const Build&, Litres deficit);

// How high so much water stands in the voids of the drainage layer. It may come out deeper than the
// layer, and is then a finding. Zero without a drainage layer.
Millimetres standing_level(const Build&, const LayersPlan&, Litres drained);

// The highest level that keeps the air gap under the separator; nothing without a drainage layer.
std::optional<Millimetres> highest_standing(const Build&);

}  // namespace loamsheet
