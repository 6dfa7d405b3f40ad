// pattern: what may be typed for a key, as a regular expression for the schema.
#pragma once
#include <string>

#include "read/key.h"

namespace loamsheet {

// For the kinds that are typed as text; ECMA syntax, anchored at both ends.
std::string pattern_of(const Key&);

}  // namespace loamsheet
