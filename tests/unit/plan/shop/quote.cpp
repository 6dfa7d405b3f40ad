// Quotes worked by hand, to the coin.
#include "plan/shop/quote.h"

#include <catch2/catch.hpp>

#include "builds.h"
#include "plan/plan.h"

using namespace loamsheet;
using namespace loamsheet::tests;

namespace {

Money money(const std::string& text) {
  return *money_of(*exact_number(text));
}

PullItem taken(const std::string& use, const std::string& item, std::vector<Pack> packs) {
  PullItem pulled{use, item, 1, "piece", std::move(packs), {}};
  Money sum;
  bool priced = !pulled.packs.empty();
  for (const Pack& pack : pulled.packs) {
    priced = priced && pack.price;
    if (pack.price) sum += *pack.price * pack.count;
  }
  if (priced) pulled.price = sum;
  return pulled;
}

Pack packs(int count, const std::string& price) {
  return {1, count, 1, "piece", money(price), "A1"};
}

QuoteTerms euros() {
  QuoteTerms terms;
  terms.currency = "EUR";
  terms.tax = {1, 5};
  terms.hours = {7, 2}, terms.rate = money("32");
  terms.deposit = {3, 10};
  return terms;
}

Quote quoted(const QuoteTerms& terms, const std::vector<PullItem>& list) {
  Build build = box_build();
  build.quote = terms;
  return *plan_quote(build, list);
}

void check_sums(const Quote& q, const std::vector<std::string>& sums) {
  CHECK(decimal(q.net, q.digits) == sums[0]);
  CHECK(decimal(q.tax, q.digits) == sums[1]);
  CHECK(decimal(q.total, q.digits) == sums[2]);
  CHECK(decimal(q.deposit, q.digits) == sums[3]);
  CHECK(decimal(q.balance, q.digits) == sums[4]);
}

}  // namespace

TEST_CASE("a quote in euros") {
  // 2 x 8.00 + 1 x 31.00 + 3 x 5.50 = 63.50; plants 2 x 5.50 + 4.50 = 15.50; crew 6.50
  // labour 3.5 h x 32 = 112.00; delivery 25.00; net 222.50
  // tax 20 % = 44.50; total 267.00; deposit 30 % = 80.10; balance 186.90
  QuoteTerms terms = euros();
  terms.delivery = money("25");
  const Quote q =
      quoted(terms, {taken("drainage", "expanded-clay", {packs(1, "31.00"), packs(2, "8.00")}),
                     taken("plants", "peperomia-obtusifolia", {packs(2, "5.50")}),
                     taken("separator", "fibreglass-mesh", {packs(3, "5.50")}),
                     taken("plants", "ficus-pumila", {packs(1, "4.50")}),
                     taken("crew", "folsomia-candida", {packs(1, "6.50")})});
  CHECK(decimal(subtotal(q, QuoteGroup::materials), 2) == "63.50");
  CHECK(decimal(subtotal(q, QuoteGroup::plants), 2) == "15.50");
  CHECK(decimal(subtotal(q, QuoteGroup::crew), 2) == "6.50");
  CHECK(decimal(subtotal(q, QuoteGroup::labour), 2) == "112.00");
  check_sums(q, {"222.50", "44.50", "267.00", "80.10", "186.90"});
  CHECK_FALSE(q.partial());
}

TEST_CASE("a quote in dollars with odd cents rounds each line, then the tax, then the deposit") {
  // 3 x 1.335 = 4.005 -> 4.01; 7 x 0.105 = 0.735 -> 0.74; labour 1 1/3 h x 45.50 = 60.6666 -> 60.67
  // net 65.42; tax 8.875 % = 5.806025 -> 5.81; total 71.23; deposit 1/3 = 23.7433 -> 23.74
  // balance 47.49
  QuoteTerms terms = euros();
  terms.currency = "USD";
  terms.tax = *exact_number("0.08875");
  terms.hours = {4, 3}, terms.rate = money("45.50");
  terms.deposit = {1, 3};
  const Quote q = quoted(terms, {taken("substrate", "coir", {packs(3, "1.335")}),
                                 taken("litter", "oak-leaves", {packs(7, "0.105")})});
  CHECK(decimal(*q.lines[0].amount, 2) == "4.01");
  CHECK(decimal(*q.lines[1].amount, 2) == "0.74");
  CHECK(decimal(*q.lines[2].amount, 2) == "60.67");
  check_sums(q, {"65.42", "5.81", "71.23", "23.74", "47.49"});
}

TEST_CASE("a quote in yen has no decimals, one in dinars three") {
  // yen: 3 x 480 = 1440; labour 2.25 h x 3300 = 7425; net 8865; tax 10 % = 886.5 -> 887
  // total 9752; deposit 30 % = 2925.6 -> 2926; balance 6826
  QuoteTerms yen = euros();
  yen.currency = "JPY", yen.digits = 0;
  yen.tax = {1, 10}, yen.hours = {9, 4}, yen.rate = money("3300");
  check_sums(quoted(yen, {taken("substrate", "coir", {packs(3, "480")})}),
             {"8865", "887", "9752", "2926", "6826"});
  // dinars: 3 x 1.2345 = 3.7035 -> 3.704; labour 0.5 h x 7.25 = 3.625; net 7.329
  // tax 5 % = 0.36645 -> 0.366; total 7.695; deposit 25 % = 1.92375 -> 1.924; balance 5.771
  QuoteTerms dinars = euros();
  dinars.currency = "KWD", dinars.digits = 3;
  dinars.tax = {1, 20}, dinars.hours = {1, 2}, dinars.rate = money("7.25");
  dinars.deposit = {1, 4};
  check_sums(quoted(dinars, {taken("substrate", "coir", {packs(3, "1.2345")})}),
             {"7.329", "0.366", "7.695", "1.924", "5.771"});
}

TEST_CASE("what has no price leaves the total partial") {
  Pack unpriced = packs(2, "1");
  unpriced.price.reset();
  const Quote q =
      quoted(euros(), {taken("substrate", "coir", {unpriced}), taken("plants", "ficus-pumila", {}),
                       taken("litter", "oak-leaves", {packs(1, "6.00")})});
  CHECK(q.partial());
  CHECK(q.unpriced == 2);
  check_sums(q, {"118.00", "23.60", "141.60", "42.48", "99.12"});
}

TEST_CASE("furnishings and equipment count only where the stock list has them") {
  const Quote q = quoted(euros(), {taken("equipment", "lamp-bar", {}),
                                   taken("furnishing", "hide", {packs(2, "7.80")})});
  CHECK_FALSE(q.partial());
  REQUIRE(q.lines.size() == 2);
  CHECK(decimal(q.net, 2) == "127.60");
}

TEST_CASE("validity is a date where the day of the quote is known") {
  QuoteTerms terms = euros();
  terms.valid_days = 14;
  CHECK_FALSE(quoted(terms, {}).valid_until);
  terms.dated = *parse_date("2026-02-20");
  CHECK(iso(*quoted(terms, {}).valid_until) == "2026-03-06");
}

TEST_CASE("by groups the sums stay, and packs and prices of goods are gone") {
  const Quote whole = quoted(euros(), {taken("substrate", "coir", {packs(3, "1.10")}),
                                       taken("litter", "oak-leaves", {packs(1, "6.00")}),
                                       taken("plants", "ficus-pumila", {packs(1, "4.50")})});
  const Quote cut = by_group(whole);
  REQUIRE(cut.lines.size() == 3);
  CHECK(cut.lines[0].item.empty());
  CHECK_FALSE(cut.lines[0].each);
  CHECK(decimal(*cut.lines[0].amount, 2) == "9.30");
  CHECK(cut.total == whole.total);
  CHECK(cut.lines[2].hours);
}

TEST_CASE("no quote is made that was not asked for") {
  CHECK_FALSE(plan_quote(box_build(), {}));
}
