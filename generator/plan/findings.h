// findings: the rules that a plan is held against. Each gives its findings, without words; a rule
// made for one kind of build does not fire in another.
#pragma once
#include <vector>

#include "check/build.h"
#include "plan/finding.h"
#include "plan/plan.h"

namespace loamsheet {

using Found = std::vector<Finding>;

void append(Found& all, Found more);

// Layers against openings, height and slope; what stands in them.
Found layer_findings(const Build&, const Plan&);

// What holds the steps of a terraced substrate.
Found terrace_findings(const Build&);

// Drainage and the water that stands in it.
Found drainage_findings(const Build&, const Plan&);

// What the stand and the tank's base bear.
Found tank_findings(const Build&, const Plan&);

// The water that is misted, and what the mister may do.
Found water_findings(const Build&, const Plan&);

// What the shelf does not hold, and what has no price.
Found stock_findings(const Build&, const Plan&);

// Doses, cultures, fixings, stones, the water area's fittings and the heaviest sack.
Found goods_findings(const Build&, const Plan&);

// Who may lift the empty tank.
Found lift_findings(const Build&, const Plan&);

// Dates of planting and move.
Found schedule_findings(const Build&, const Plan&);

// Who goes with whom, and plants without a place.
Found life_findings(const Build&, const Plan&);

// The light of the plants and the UV of the animals against their bands, with the change of a lamp
// that mends it; lamps of which too little is known.
Found light_findings(const Build&, const Plan&);

// Heat and humidity against what the animals need; heaters.
Found climate_findings(const Build&, const Plan&);

// Values that nobody knows, and keys that nothing is worked out from yet.
Found input_findings(const Build&);

// What was taken on, replaced and chosen: stops cannot be taken on; what a number or a rule names
// must be there. `found` is what the other rules found.
Found record_findings(const Build&, const Plan&, const Found& found);

// All of them: stops first, then cautions, then notes; each in the order of the spec, those
// without a place last.
Found all_findings(const Build&, const Plan&);

}  // namespace loamsheet
