// How wide the columns of a table are.
#include "layout/columns.h"

#include <catch2/catch.hpp>

using namespace loamsheet;

namespace {

using Widths = std::vector<double>;

void check(const std::vector<ColumnNeed>& columns, double width, const Widths& expected) {
  const auto widths = column_widths(columns, width, 20);
  REQUIRE(widths);
  REQUIRE(widths->size() == expected.size());
  for (size_t i = 0; i < expected.size(); ++i) CHECK((*widths)[i] == Approx(expected[i]));
}

}  // namespace

TEST_CASE("spare width is shared by weight") {
  check({{{30, 60}, 2}, {{30, 40}, 1}, {{30, 50}, 0}}, 300, {160, 90, 50});
}

TEST_CASE("columns that want too much get their least and a share by what they want beyond") {
  check({{{40, 240}, 1}, {{60, 60}, 1}, {{40, 140}, 1}}, 290, {140, 60, 90});
}

TEST_CASE("when even the least is too much, the widest give way first") {
  check({{{300, 300}, 1}, {{30, 30}, 1}, {{200, 200}, 1}}, 230, {100, 30, 100});
  CHECK(!column_widths({{{30, 30}, 1}, {{30, 30}, 1}, {{30, 30}, 1}}, 50, 20));
}

TEST_CASE("width that lines leave over goes to the columns that want least") {
  const auto widths = regiven_widths({{{100, 110}, 1}, {{200, 400}, 1}, {{50, 50}, 1}}, 400);
  CHECK(widths == Widths{110, 240, 50});
}
