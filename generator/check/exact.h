// exact: numbers and amounts of money, taken from the text that was typed, not from its binary
// value.
#pragma once
#include <optional>
#include <string>

#include "base/money.h"
#include "check/checking.h"

namespace loamsheet {

struct ExactNumber {
  std::optional<Ratio> number;  // nothing for what is no number, or too long a one
  std::string unit;
};
ExactNumber exact_number_of(const Node&);

// The amount; an error and zero where it has more than four decimals.
Money exact_money(Checking&, const Node&);

void not_exact(Checking&, const Node&, std::string expected);

}  // namespace loamsheet
