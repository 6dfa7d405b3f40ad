// leaf: a single value as the row of its key wants it.
#pragma once
#include <string>

#include "read/quantity.h"

namespace loamsheet {

// Reads a scalar for a row that is no group, list or table. `quoted` text is never the unknown "?".
Reading read_leaf(const Key&, const std::string& text, bool quoted);

// Small letters, digits and single hyphens: ficus-pumila.
bool is_id(std::string_view text);

// The text as an id, when only capitals, blanks and underscores stand in the way; else empty.
std::string as_id(std::string_view text);

}  // namespace loamsheet
