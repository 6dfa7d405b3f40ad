// json: how figures are written in the numbers.
#pragma once
#include <nlohmann/json.hpp>

#include "base/text.h"
#include "base/units.h"

namespace loamsheet {

using Json = nlohmann::ordered_json;

// The text of a document: nested by two blanks, an array of numbers on one line where it fits.
std::string document(const Json&);

inline constexpr int digits_written = 6;

inline Json figure(double v) {
  return rounded(v, digits_written) + 0.0;
}

template <class Unit>
Json figure(Amount<Unit> amount) {
  return figure(amount.v);
}

template <class Unit>
Json figure(const Range<Amount<Unit>>& range) {
  if (range.exact()) return figure(range.low);
  return Json::array({figure(range.low), figure(range.high)});
}

template <class T>
Json figure(const std::optional<T>& maybe) {
  return maybe ? figure(*maybe) : Json(nullptr);
}

}  // namespace loamsheet
