#include "base/text.h"
#include "read/key.h"
#include "read/unit.h"

namespace loamsheet {
namespace {

bool limited(const Key& key) {
  return key.limits.low != 0 || key.limits.high != 0;
}

std::string between(const Key& key) {
  if (!limited(key)) return "";
  return ", " + quantity_text(key.kind, key.limits.low) + " to " +
         quantity_text(key.kind, key.limits.high);
}

std::string count_of_items(const Key& key) {
  if (!limited(key)) return "a list";
  const std::string low = fixed(key.limits.low, 0), high = fixed(key.limits.high, 0);
  if (low == high) return "a list of " + low;
  return "a list of " + low + " to " + high;
}

std::string amount(const Key& key) {
  std::string words(kind_words(key.kind));
  if (key.has(flag::range_ok)) words += " or a range";
  if (key.kind != Kind::share) words += " with its unit";
  return words + between(key);
}

std::string kind_of_value(const Key& key) {
  switch (key.kind) {
    case Kind::group:
    case Kind::table:
      return "keys of its own";
    case Kind::list:
      return count_of_items(key);
    case Kind::text:
      return "a line of text";
    case Kind::id:
      return "a name in small letters with hyphens";
    case Kind::choice:
      return "one of " + join(split(key.choices, '|'), ", ");
    case Kind::yes_no:
      return "yes or no";
    case Kind::date:
      return "a date as year-month-day";
    case Kind::integer:
      return "a whole number" + between(key);
    case Kind::number:
    case Kind::uv_index:
      return "a number without a unit" + between(key);
    case Kind::reference:
      return "letters, digits, '.', '_' and '-', at most " + fixed(key.limits.high, 0);
    case Kind::currency:
      return "three capital letters";
    default:
      return amount(key);
  }
}

}  // namespace

std::string expectation(const Key& key) {
  std::string words = kind_of_value(key);
  if (key.has(flag::unknown_ok)) words += ", or ? when it is not known";
  constexpr int longest_example = 60;
  const bool choices = key.kind == Kind::choice || key.kind == Kind::yes_no;
  const int length = code_points(key.example);
  if (!choices && length > 0 && length <= longest_example) {
    words += ", such as " + std::string(key.example);
  }
  return words;
}

}  // namespace loamsheet
