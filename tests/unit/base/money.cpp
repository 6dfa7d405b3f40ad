#include "base/money.h"

#include <catch2/catch.hpp>

using namespace loamsheet;

namespace {

Money money(const std::string& text) {
  return *money_of(*exact_number(text));
}

}  // namespace

TEST_CASE("a number is taken exactly as it was written") {
  const auto same = [](const std::string& text, std::int64_t top, std::int64_t bottom) {
    const auto r = exact_number(text);
    REQUIRE(r);
    CHECK(r->top == top);
    CHECK(r->bottom == bottom);
  };
  same("12", 12, 1);
  same("12.50", 25, 2);
  same(".5", 1, 2);
  same("0.1", 1, 10);
  same("3 1/2", 7, 2);
  same("6/8", 3, 4);
}

TEST_CASE("what is no number, or too long to be exact, is none") {
  for (const char* text : {"", "-1", "1e3", "1,5", "1/0", "1/", "x", "1.2.3", "1.5 1/2",
                           "1234567890123456", "0.1234567890123456"}) {
    INFO(text);
    CHECK_FALSE(exact_number(text));
  }
}

TEST_CASE("an amount keeps four decimals and no more") {
  CHECK(money("12.3456").v == 123456);
  CHECK_FALSE(money_of({1, 3}));
  CHECK_FALSE(money_of(*exact_number("0.00001")));
}

TEST_CASE("ten times a tenth is one, which binary fractions do not give") {
  Money sum;
  for (int i = 0; i < 10; ++i) sum += money("0.1");
  CHECK(sum == money("1"));
}

TEST_CASE("half a coin is rounded away from zero") {
  CHECK(to_coins(money("2.345"), 2) == money("2.35"));
  CHECK(to_coins(money("2.3449"), 2) == money("2.34"));
  CHECK(to_coins(money("0.5"), 0) == money("1"));
  CHECK(to_coins(Money{} - money("2.345"), 2) == Money{} - money("2.35"));
  CHECK(to_coins(money("1.0005"), 3) == money("1.001"));
}

TEST_CASE("a share is taken exactly and rounded once") {
  CHECK(share_of(money("100"), {1, 3}, 2) == money("33.33"));
  CHECK(share_of(money("200"), {1, 3}, 2) == money("66.67"));
  CHECK(share_of(money("19.99"), *exact_number("0.08875"), 2) == money("1.77"));
  CHECK(share_of(money("1000000"), {999999, 1000000}, 2) == money("999999"));
}

TEST_CASE("an amount is written with the decimals of its coins") {
  CHECK(decimal(money("1234.5"), 2) == "1234.50");
  CHECK(decimal(money("0.05"), 2) == "0.05");
  CHECK(decimal(money("7"), 0) == "7");
  CHECK(decimal(Money{} - money("0.05"), 2) == "-0.05");
  CHECK(whole_decimal(money("32.125"), 2) == "32.125");
  CHECK(whole_decimal(money("32"), 2) == "32.00");
}
