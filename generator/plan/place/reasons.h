// reasons: why a plant stands where it stands, in its own numbers.
#pragma once
#include <optional>
#include <vector>

#include "plan/place/planting.h"
#include "plan/place/search.h"

namespace loamsheet {

// A place with the light that neighbours leave there, and how the plant would fit it.
struct Weighed {
  Site site;
  double fit = 0;  // 0 to 1
};

// What the plant gets there and wants; whether the place is one that its habit wants; the next best
// place, and what it would cost.
std::vector<Reason> reasons(const ToPlace&, const Weighed& here,
                            const std::optional<Weighed>& next);

}  // namespace loamsheet
