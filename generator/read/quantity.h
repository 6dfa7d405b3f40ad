// quantity: amounts with their units as text, and ranges of them.
#pragma once
#include <string>
#include <string_view>

#include "read/node.h"

namespace loamsheet {

// What came of a leaf's text: a value, or what is wrong with it.
struct Reading {
  Leaf value;           // monostate when it could not be read
  std::string message;  // what is wrong
  std::string hint;     // how to mend it
  std::string fix;      // the whole leaf as it should be written, when that surely mends it
  bool ok() const { return message.empty(); }
};

// An amount, number or range for the row of a key. Limits are held, "?" is not looked at.
Reading read_quantity(const Key&, std::string_view typed);

// The two ends of "[21 °C, 24 °C]".
Reading read_range(const Key&, std::string_view low, std::string_view high);

}  // namespace loamsheet
