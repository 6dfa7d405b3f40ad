#include "base/money.h"

#include <algorithm>
#include <numeric>

namespace loamsheet {
namespace {

constexpr int decimals = 4;  // that an amount keeps
constexpr size_t most_digits = 15;

constexpr std::int64_t power_of_ten(int n) {
  std::int64_t v = 1;
  for (; n > 0; --n) v *= 10;
  return v;
}

bool all_digits(std::string_view text) {
  return !text.empty() && text.size() <= most_digits &&
         text.find_first_not_of("0123456789") == std::string_view::npos;
}

std::int64_t whole(std::string_view digits) {
  std::int64_t v = 0;
  for (char c : digits) v = v * 10 + (c - '0');
  return v;
}

Ratio lowest(Ratio r) {
  const std::int64_t common = std::gcd(r.top, r.bottom);
  return common > 1 ? Ratio{r.top / common, r.bottom / common} : r;
}

std::optional<Ratio> decimal_number(std::string_view text) {
  const size_t point = text.find('.');
  if (point == std::string_view::npos) {
    return all_digits(text) ? std::optional(Ratio{whole(text), 1}) : std::nullopt;
  }
  const std::string digits =
      std::string(text.substr(0, point)) + std::string(text.substr(point + 1));
  if (!all_digits(digits)) return std::nullopt;
  return lowest({whole(digits), power_of_ten(static_cast<int>(text.size() - point) - 1)});
}

std::optional<Ratio> fraction(std::string_view text) {
  const size_t slash = text.find('/');
  const std::string_view top = text.substr(0, slash), bottom = text.substr(slash + 1);
  if (!all_digits(top) || !all_digits(bottom) || whole(bottom) == 0) return std::nullopt;
  return lowest({whole(top), whole(bottom)});
}

// top / bottom, to the nearest whole number, half away from zero.
std::int64_t nearest(__int128 top, std::int64_t bottom) {
  const __int128 size = top < 0 ? -top : top;
  const auto rounded = static_cast<std::int64_t>((2 * size + bottom) / (2 * __int128{bottom}));
  return top < 0 ? -rounded : rounded;
}

}  // namespace

std::optional<Ratio> exact_number(std::string_view text) {
  if (text.find('/') == std::string_view::npos) return decimal_number(text);
  const size_t blank = text.find(' ');
  if (blank == std::string_view::npos) return fraction(text);
  const auto before = decimal_number(text.substr(0, blank));
  const auto part = fraction(text.substr(blank + 1));
  if (!before || !part || before->bottom != 1) return std::nullopt;
  const __int128 top = __int128{before->top} * part->bottom + part->top;
  if (top > power_of_ten(static_cast<int>(most_digits))) return std::nullopt;
  return lowest({static_cast<std::int64_t>(top), part->bottom});
}

Ratio operator*(Ratio a, Ratio b) {
  const std::int64_t one = std::gcd(a.top, b.bottom), other = std::gcd(b.top, a.bottom);
  return lowest({(a.top / one) * (b.top / other), (a.bottom / other) * (b.bottom / one)});
}

std::optional<Money> money_of(const Ratio& r) {
  const __int128 scaled = __int128{r.top} * power_of_ten(decimals);
  if (scaled % r.bottom != 0) return std::nullopt;
  return Money{static_cast<std::int64_t>(scaled / r.bottom)};
}

Money share_of(Money whole_amount, const Ratio& share, int digits) {
  const std::int64_t coin = power_of_ten(decimals - digits);
  const __int128 top = __int128{whole_amount.v} * share.top;
  return {nearest(top, share.bottom * coin) * coin};
}

Money to_coins(Money amount, int digits) {
  return share_of(amount, {1, 1}, digits);
}

std::string decimal(Money amount, int digits) {
  const std::int64_t coin = power_of_ten(decimals - digits), unit = power_of_ten(digits);
  const std::int64_t coins = (amount.v < 0 ? -amount.v : amount.v) / coin;
  std::string text = (amount.v < 0 ? "-" : "") + std::to_string(coins / unit);
  if (digits == 0) return text;
  const std::string small = std::to_string(coins % unit);
  return text + '.' + std::string(static_cast<size_t>(digits) - small.size(), '0') + small;
}

std::string whole_decimal(Money amount, int digits) {
  while (digits < decimals && amount.v % power_of_ten(decimals - digits) != 0) ++digits;
  return decimal(amount, digits);
}

}  // namespace loamsheet
