// climate_fit: the air of the enclosure against the bands of everything that lives in it, winter
// and summer, day and night.
#pragma once
#include <array>
#include <optional>
#include <string>
#include <vector>

#include "plan/climate.h"

namespace loamsheet {

// The worst that is met outside a band, one way and the other; nothing where the band is kept.
struct OutsideBand {
  std::optional<Celsius> coldest, warmest;
  std::optional<Fraction> driest, dampest;
  bool fits() const { return !coldest && !warmest && !driest && !dampest; }
};

struct ClimateFit {
  std::string name;
  std::array<OutsideBand, 4> at;  // winter day and night, summer day and night
};

// Animals first, then each kind of plant and of the crew, in the order of the spec. What is not
// known of a species is not held against the air.
std::vector<ClimateFit> climate_fit(const Build&, const AirPlan&);

}  // namespace loamsheet
