// number: numbers as people write them: 12, 12.5, -3, 1/2, 1 1/2, 1½.
#pragma once
#include <string>
#include <string_view>

namespace loamsheet {

struct Number {
  enum class Fault { none, not_a_number, comma, thousands, blank, endless, exponent };
  Fault fault = Fault::none;
  double value = 0;
  size_t length = 0;   // bytes of the text that the number takes
  std::string mended;  // with fault comma, blank, exponent: the number as it should be written
};

// The number at the front of normalised text.
Number parse_number(std::string_view text);

// One spelling for what is written in several ways: vulgar fractions as "1/2", all blanks as one,
// minus signs, degree signs, primes, raised digits of units.
std::string normalised(std::string_view text);

// What is wrong, in words; empty when nothing is.
std::string fault_words(const Number&, std::string_view typed);

}  // namespace loamsheet
