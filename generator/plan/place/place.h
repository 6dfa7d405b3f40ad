// place: where every plant goes, and why, and what is found against its place.
#pragma once
#include <optional>

#include "base/finding.h"
#include "plan/air/air.h"
#include "plan/place/planting.h"

namespace loamsheet {

// What is known once every plant has its place.
struct Planted : Climate {
  std::optional<PlantingPlan> planting;
};

// Plants without a place, and pins that break a rule.
Found placed_findings(const Build&, const Planted&);

// The light of the plants against their bands, with the change of a lamp that mends it.
Found lit_findings(const Build&, const Planted&);

}  // namespace loamsheet
