#include "check/exact.h"

#include <utility>

#include "base/text.h"
#include "read/number.h"

namespace loamsheet {

ExactNumber exact_number_of(const Node& leaf) {
  const std::string text = normalised(leaf.typed);
  const Number n = parse_number(text);
  if (n.fault != Number::Fault::none) return {};
  return {exact_number(text.substr(0, n.length)), trimmed(text.substr(n.length))};
}

void not_exact(Checking& c, const Node& leaf, std::string expected) {
  c.error(leaf.where, "'" + leaf.typed + "' cannot be reckoned with exactly", std::move(expected));
}

Money exact_money(Checking& c, const Node& leaf) {
  const ExactNumber typed = exact_number_of(leaf);
  const auto amount = typed.number ? money_of(*typed.number) : std::nullopt;
  if (!amount) {
    not_exact(c, leaf, "an amount with at most four decimals, such as 32 or 32.50");
  }
  return amount.value_or(Money{});
}

}  // namespace loamsheet
