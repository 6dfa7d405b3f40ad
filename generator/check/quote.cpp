#include "check/quote.h"

#include "base/text.h"
#include "check/checking.h"
#include "check/names.h"
#include "read/number.h"
#include "read/unit.h"

namespace loamsheet {
namespace {

// The amounts of a quote, taken from the text that was typed, not from its binary value.
class QuoteReader {
 public:
  QuoteReader(Checking& c, const Node& quote) : c_(c), quote_(quote) {}

  QuoteTerms read() {
    terms_.where = quote_.where;
    currency();
    terms_.tax = share("tax");
    terms_.deposit = share("deposit");
    labour();
    if (quote_.has("delivery")) terms_.delivery = money("delivery");
    if (const auto days = quote_.number("valid")) terms_.valid_days = static_cast<int>(*days);
    terms_.dated = quote_.date("dated");
    return std::move(terms_);
  }

 private:
  struct Typed {
    std::optional<Ratio> number;
    std::string unit;
  };

  Typed typed(std::string_view key) const {
    const Node* leaf = quote_.find(key);
    const std::string text = normalised(leaf ? leaf->typed : "");
    const Number n = parse_number(text);
    if (n.fault != Number::Fault::none) return {};
    return {exact_number(text.substr(0, n.length)), trimmed(text.substr(n.length))};
  }

  void not_exact(std::string_view key, std::string expected) {
    const Node* leaf = quote_.find(key);
    c_.error(leaf->where, "'" + leaf->typed + "' cannot be reckoned with exactly",
             std::move(expected));
  }

  Ratio share(std::string_view key) {
    if (!quote_.has(key)) return {};
    const Typed t = typed(key);
    if (!t.number) return not_exact(key, "a share such as 20 % or 8.875 %"), Ratio{};
    return t.unit.empty() ? *t.number : *t.number * Ratio{1, 100};
  }

  Money money(std::string_view key) {
    const Typed t = typed(key);
    const auto amount = t.number ? money_of(*t.number) : std::nullopt;
    if (!amount) not_exact(key, "an amount with at most four decimals, such as 32 or 32.50");
    return amount.value_or(Money{});
  }

  void labour() {
    if (!quote_.has("labour")) return;
    const Typed t = typed("labour");
    const Unit* unit = find_unit(Kind::hours, t.unit);
    if (!t.number || !unit) return not_exact("labour", "hours such as 3.5 h");
    terms_.hours = *t.number * Ratio{static_cast<std::int64_t>(unit->top),
                                     static_cast<std::int64_t>(unit->bottom)};
    if (quote_.has("rate")) {
      terms_.rate = money("rate");
    } else {
      c_.error(quote_.find("labour")->where, "labour is charged, but what an hour costs is missing",
               "", "add rate to quote, such as 'rate: 32 per h'");
    }
  }

  void currency() {
    terms_.currency = quote_.text("currency").value_or("");
    const auto known = c_.catalogue.currencies.find(terms_.currency);
    if (known != c_.catalogue.currencies.end()) {
      terms_.digits = known->second;
    } else if (const Node* leaf = quote_.find("currency")) {
      unknown_name(c_, word_of(*leaf), "currency of ISO 4217", ids_of(c_.catalogue.currencies));
    }
  }

  Checking& c_;
  const Node& quote_;
  QuoteTerms terms_;
};

}  // namespace

void check_quote(Checking& c) {
  if (const Node* quote = c.root.find("quote")) c.build.quote = QuoteReader(c, *quote).read();
}

}  // namespace loamsheet
