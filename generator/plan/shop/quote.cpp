#include "plan/shop/quote.h"

#include "check/build.h"
#include "plan/shop/pull_item.h"
#include "plan/shop/shop.h"

namespace loamsheet {
namespace {

QuoteGroup group_of(const PullItem& item) {
  if (item.use == "plants") return QuoteGroup::plants;
  return item.use == "crew" ? QuoteGroup::crew : QuoteGroup::materials;
}

void add_packs(const PullItem& item, Quote& quote) {
  if (!item.price) ++quote.unpriced;
  if (item.packs.empty()) {
    quote.lines.push_back({.group = group_of(item), .item = item.item});
    return;
  }
  for (const Pack& pack : item.packs) {
    QuoteLine line{.group = group_of(item), .item = item.item};
    line.count = pack.count, line.size = pack.sold, line.unit = pack.sold_unit;
    line.each = pack.price;
    if (pack.price) line.amount = to_coins(*pack.price * pack.count, quote.digits);
    quote.lines.push_back(std::move(line));
  }
}

void add_labour(const QuoteTerms& terms, Quote& quote) {
  if (terms.hours.top == 0) return;
  QuoteLine line{.group = QuoteGroup::labour};
  line.hours = terms.hours, line.each = terms.rate;
  line.amount = share_of(terms.rate, terms.hours, terms.digits);
  quote.lines.push_back(std::move(line));
}

void add_delivery(const QuoteTerms& terms, Quote& quote) {
  if (!terms.delivery) return;
  QuoteLine line{.group = QuoteGroup::delivery};
  line.amount = to_coins(*terms.delivery, terms.digits);
  quote.lines.push_back(std::move(line));
}

void add_up(const QuoteTerms& terms, Quote& quote) {
  for (const QuoteLine& line : quote.lines) quote.net += line.amount.value_or(Money{});
  quote.tax_share = terms.tax, quote.deposit_share = terms.deposit;
  quote.tax = share_of(quote.net, terms.tax, quote.digits);
  quote.total = quote.net + quote.tax;
  quote.deposit = share_of(quote.total, terms.deposit, quote.digits);
  quote.balance = quote.total - quote.deposit;
}

}  // namespace

const char* name_of(QuoteGroup group) {
  constexpr const char* names[] = {"materials", "plants", "crew", "labour", "delivery"};
  return names[static_cast<int>(group)];
}

Money subtotal(const Quote& quote, QuoteGroup group) {
  Money sum;
  for (const QuoteLine& line : quote.lines) {
    if (line.group == group) sum += line.amount.value_or(Money{});
  }
  return sum;
}

std::optional<Quote> plan_quote(const Build& build, const std::vector<PullItem>& list) {
  if (!build.quote) return std::nullopt;
  const QuoteTerms& terms = *build.quote;
  Quote quote;
  quote.currency = terms.currency, quote.digits = terms.digits;
  for (QuoteGroup group : {QuoteGroup::materials, QuoteGroup::plants, QuoteGroup::crew}) {
    for (const PullItem& item : list) {
      const bool not_sold = item.packs.empty() && may_be_there(item);
      if (group_of(item) == group && !not_sold) add_packs(item, quote);
    }
  }
  add_labour(terms, quote);
  add_delivery(terms, quote);
  add_up(terms, quote);
  quote.valid_days = terms.valid_days;
  if (terms.valid_days && terms.dated) {
    quote.valid_until = plus_days(*terms.dated, *terms.valid_days);
  }
  return quote;
}

Quote by_group(const Quote& quote) {
  Quote out = quote;
  out.lines.clear();
  for (const QuoteLine& line : quote.lines) {
    const bool goods = line.group < QuoteGroup::labour;
    if (!goods) out.lines.push_back(line);
    const bool seen = !out.lines.empty() && out.lines.back().group == line.group;
    if (!goods || seen) continue;
    QuoteLine sum{.group = line.group};
    sum.amount = subtotal(quote, line.group);
    out.lines.push_back(std::move(sum));
  }
  return out;
}

}  // namespace loamsheet
