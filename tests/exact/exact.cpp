// The search for places against the exact best of all placements.
#include <catch2/catch.hpp>

#include "model.h"

using namespace loamsheet;
using namespace loamsheet::tests;

TEST_CASE(
    "of forty drawn cases each is within a hundredth of the exact best, and nine in ten equal") {
  constexpr int cases = 40;
  int equal = 0;
  for (int number = 1; number <= cases; ++number) {
    INFO("case " << number);
    const Case drawn = drawn_case(static_cast<std::uint32_t>(number), 6, 24);
    const long exact = exact_score(drawn);
    REQUIRE(exact > 0);
    const Placement found = place(drawn.plants, drawn.sites, drawn.lamp);
    CHECK(found.score <= exact + 1);  // GLPK's own rounding
    CHECK(found.score * 100 >= exact * 99);
    CHECK(found.bound >= exact - 1);
    equal += found.score >= exact - 1 ? 1 : 0;
  }
  CHECK(equal * 10 >= cases * 9);
}
