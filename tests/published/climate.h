// climate: how our light and air are asked for a published quantity.
#pragma once
#include "quantities.h"

namespace loamsheet::tests {

const std::map<std::string, Quantity>& climate_quantities();

}  // namespace loamsheet::tests
