// money: amounts of money and the shares taken of them, exactly: whole numbers, never binary
// floating point.
#pragma once
#include <compare>
#include <cstdint>
#include <optional>
#include <string>
#include <string_view>

namespace loamsheet {

// A number as it was written, "12.50", "1/2" or "3 1/2", in whole numbers; `bottom` is above zero.
struct Ratio {
  std::int64_t top = 0, bottom = 1;
};

// Nothing for a text that is no such number, is negative, or has more than 15 digits.
std::optional<Ratio> exact_number(std::string_view text);

Ratio operator*(Ratio, Ratio);

// An amount in ten-thousandths of the currency's unit: no currency of ISO 4217 has finer coins.
struct Money {
  std::int64_t v = 0;
  auto operator<=>(const Money&) const = default;
  Money& operator+=(Money o) { return v += o.v, *this; }
  friend Money operator+(Money a, Money b) { return {a.v + b.v}; }
  friend Money operator-(Money a, Money b) { return {a.v - b.v}; }
  friend Money operator*(Money a, std::int64_t n) { return {a.v * n}; }
};

// The amount that the number stands for; nothing with more than four decimals.
std::optional<Money> money_of(const Ratio&);

// So much of an amount, rounded to `digits` decimals, half away from zero.
Money share_of(Money, const Ratio&, int digits);

// The amount rounded to `digits` decimals, half away from zero.
Money to_coins(Money, int digits);

// "12.50": the amount with so many decimals, to which it was rounded.
std::string decimal(Money, int digits);

// The amount with the decimals it has, at least `digits`: "32.125".
std::string whole_decimal(Money, int digits);

}  // namespace loamsheet
