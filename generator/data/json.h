// json: how figures are written in the numbers.
#pragma once
#include <nlohmann/json.hpp>

#include "base/text.h"

namespace loamsheet {

using Json = nlohmann::ordered_json;

// The text of a document: nested by two blanks, an array of numbers on one line where it fits.
std::string document(const Json&);

inline constexpr int digits_written = 6;

inline Json figure(double v) {
  return rounded(v, digits_written) + 0.0;
}

}  // namespace loamsheet
