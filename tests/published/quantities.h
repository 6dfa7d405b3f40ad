// quantities: how each published quantity is got from our functions.
#pragma once
#include <functional>
#include <map>
#include <string>

namespace loamsheet::tests {

using Inputs = std::map<std::string, std::string>;
using Quantity = std::function<std::string(const Inputs&)>;

// By the name that the data files use.
const std::map<std::string, Quantity>& quantities();

}  // namespace loamsheet::tests
