// customer: the spec as a customer may have it.
#pragma once
#include <string>

#include "base/diagnostic.h"
#include "read/read.h"

namespace loamsheet {

// The text of the spec without the shop's own blocks (the stock list, the shop's catalogue) and
// without comments, under a first line that says so. A spec with two top-level keys on one line
// cannot be cut.
Outcome<std::string> customer_spec(const Spec&, const std::string& notice);

}  // namespace loamsheet
