// quote: what the build costs the customer, line by line, to the coin.
// Each line is rounded to the currency's smallest coin, half a coin away from zero; tax is taken of
// the sum of the rounded lines and rounded the same way, and so is the deposit, of the total.
#pragma once
#include <optional>
#include <string>
#include <vector>

#include "base/date.h"
#include "base/money.h"

namespace loamsheet {

class FieldSink;
struct Build;
struct PullItem;

enum class QuoteGroup { materials, plants, crew, labour, delivery };

struct QuoteLine {
  QuoteGroup group = QuoteGroup::materials;
  std::string item{};             // id; empty where the group is one line
  int count = 0;                  // packs
  double size = 0;                // of one pack, in `unit`
  std::string unit{};             // as it is sold; empty for labour and delivery
  std::optional<Ratio> hours{};   // of labour
  std::optional<Money> each{};    // net, of a pack or an hour
  std::optional<Money> amount{};  // rounded; nothing where no price is known
};
void fields(const QuoteLine&, FieldSink&);

struct Quote {
  std::string currency;
  int digits = 2;  // decimals of its smallest coin
  std::vector<QuoteLine> lines;
  int unpriced = 0;  // needs without a price; the total is partial when there are any
  Ratio tax_share, deposit_share;
  Money net, tax, total, deposit, balance;
  std::optional<int> valid_days;
  std::optional<Date> valid_until;

  bool partial() const { return unpriced > 0; }
};
void fields(const Quote&, FieldSink&);

// "materials", "plants", ...
const char* name_of(QuoteGroup);

// The sum of a group's lines.
Money subtotal(const Quote&, QuoteGroup);

// Materials, plants and crew from the packs of the pull list, then labour and delivery. Furnishings
// and equipment count only where the stock list has them. Nothing when the spec asks for no quote.
std::optional<Quote> plan_quote(const Build&, const std::vector<PullItem>&);

// The quote with one line a group, without packs and the prices of packs.
Quote by_group(const Quote&);

}  // namespace loamsheet
