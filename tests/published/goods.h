// goods: how our units, materials, doses and plane figures are asked for a published quantity.
#pragma once
#include "quantities.h"

namespace loamsheet::tests {

const std::map<std::string, Quantity>& goods_quantities();

}  // namespace loamsheet::tests
