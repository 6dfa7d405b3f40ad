// amounts: how an amount is written, by a line of units.yaml.
#pragma once
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "base/units.h"

namespace loamsheet {

struct UnitStep {
  std::optional<double> below;  // in the kept unit; none for the last step
  double factor = 1, offset = 0;
  int decimals = 0;
  bool exact = false;  // always so many decimals, not at most
  int parts = 0;       // 8 writes eighths of an inch
  std::string unit;
};

// "below 1: x1000 .0 mL; .1 L"; nothing when the line is not written so.
std::optional<std::vector<UnitStep>> parse_steps(std::string_view line);

// How ranges and numbers look in a language.
struct NumberForm {
  std::string decimal, range, signed_range;
};

// Both ends in one unit; once when they read the same.
std::string write_amount(Range<double>, const std::vector<UnitStep>&, const NumberForm&);

}  // namespace loamsheet
