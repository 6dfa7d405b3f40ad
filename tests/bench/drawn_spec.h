// drawn_spec: whole specs drawn by number, for looking at many builds. The same number gives the
// same spec. All of them are invented.
#pragma once
#include <string>
#include <vector>

namespace loamsheet::tests {

// A furnished and planted humid tank with plants out of `species`.
std::string drawn_spec(unsigned number, const std::vector<std::string>& species);

}  // namespace loamsheet::tests
