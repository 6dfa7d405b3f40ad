// to_unicode: the CMap that says which text the codes of a font stand for.
#pragma once
#include <string>
#include <vector>

namespace loamsheet {

// For two-byte codes that are UTF-16 code units themselves. Codes ascend.
std::string to_unicode(const std::vector<int>& codes);

}  // namespace loamsheet
