// reasons: why a plant stands where it stands, in its own numbers.
#pragma once
#include <optional>
#include <vector>

#include "plan/placement.h"
#include "plan/planting.h"

namespace loamsheet {

// The light, the damp, the place that its habit wants, and the next best place.
std::vector<Reason> reasons(const ToPlace&, const Site&, const std::optional<Choice>& next);

}  // namespace loamsheet
