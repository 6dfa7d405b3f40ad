// life: how the catalogue of living things is asked for a published quantity.
#pragma once
#include "quantities.h"

namespace loamsheet::tests {

const std::map<std::string, Quantity>& life_quantities();

}  // namespace loamsheet::tests
