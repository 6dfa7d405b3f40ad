#include "check/quote.h"

#include "check/checking.h"
#include "check/exact.h"
#include "check/names.h"
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
  Ratio share(std::string_view key) {
    if (!quote_.has(key)) return {};
    const Node& leaf = *quote_.find(key);
    const ExactNumber t = exact_number_of(leaf);
    if (!t.number) return not_exact(c_, leaf, "a share such as 20 % or 8.875 %"), Ratio{};
    return t.unit.empty() ? *t.number : *t.number * Ratio{1, 100};
  }

  Money money(std::string_view key) { return exact_money(c_, *quote_.find(key)); }

  void labour() {
    if (!quote_.has("labour")) return;
    const Node& leaf = *quote_.find("labour");
    const ExactNumber t = exact_number_of(leaf);
    const Unit* unit = find_unit(Kind::hours, t.unit);
    if (!t.number || !unit) return not_exact(c_, leaf, "hours such as 3.5 h");
    terms_.hours = *t.number * Ratio{static_cast<std::int64_t>(unit->top),
                                     static_cast<std::int64_t>(unit->bottom)};
    if (quote_.has("rate")) {
      terms_.rate = money("rate");
    } else {
      c_.error(leaf.where, "labour is charged, but what an hour costs is missing", "",
               "add rate to quote, such as 'rate: 32 per h'");
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
