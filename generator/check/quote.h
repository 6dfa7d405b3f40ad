// quote: what the customer is asked to pay for besides the goods, as checked. Exact numbers only.
#pragma once
#include <optional>
#include <string>

#include "base/date.h"
#include "base/money.h"
#include "base/span.h"

namespace loamsheet {

struct QuoteTerms {
  std::string currency;  // a code of ISO 4217
  int digits = 2;        // decimals of its smallest coin
  Ratio tax;             // share on top of the net total
  Ratio hours;           // of labour; zero without
  Money rate;            // of an hour
  std::optional<Money> delivery;
  Ratio deposit;  // share of the total
  std::optional<int> valid_days;
  std::optional<Date> dated;  // the day it is made out
  Span where;
};

}  // namespace loamsheet
