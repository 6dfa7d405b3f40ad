// life: how the catalogue of living things is asked for a published quantity.
#pragma once
#include "catalogue/catalogue.h"
#include "quantities.h"

namespace loamsheet::tests {

// As the program reads it.
const Catalogue& catalogue();

const std::map<std::string, Quantity>& life_quantities();

}  // namespace loamsheet::tests
