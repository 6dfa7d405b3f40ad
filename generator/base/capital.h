// capital: the first letter of a text raised.
#pragma once
#include <string>

namespace loamsheet {

// A first letter outside of ASCII stays as it is.
std::string capitalised(std::string text);

}  // namespace loamsheet
