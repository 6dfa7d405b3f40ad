#include "base/date.h"

#include <catch2/catch.hpp>

using namespace loamsheet;

namespace {

Date day(std::string_view text) {
  const auto date = parse_date(text);
  REQUIRE(date);
  return *date;
}

}  // namespace

TEST_CASE("only real days are dates") {
  CHECK(iso(day("2026-03-07")) == "2026-03-07");
  CHECK(parse_date("2024-02-29"));
  CHECK(parse_date("2000-02-29"));
  for (const char* text : {"2023-02-29", "1900-02-29", "2100-02-29", "2026-13-01", "2026-00-10",
                           "2026-04-31", "2026-4-1", "26-04-01", "2026/04/01", "2026-04-1x",
                           "-026-04-01", "1899-12-31", "2200-01-01", ""}) {
    CHECK_FALSE(parse_date(text));
  }
}

TEST_CASE("days of the week") {
  CHECK(weekday(day("2026-11-25")) == 2);  // 2026-W48-3
  CHECK(weekday(day("2027-01-03")) == 6);  // 2026-W53-7
  CHECK(weekday(day("2024-12-30")) == 0);  // 2025-W01-1
}

TEST_CASE("days between") {
  CHECK(days_between(day("2026-03-07"), day("2026-04-18")) == 42);
  CHECK(days_between(day("2026-04-18"), day("2026-03-07")) == -42);
}

TEST_CASE("seconds since 1970") {
  CHECK(unix_seconds(day("1970-01-02")) == 86400);
  CHECK(iso(date_of(1'700'000'000)) == "2023-11-14");
  CHECK(iso(date_of(86399)) == "1970-01-01");
  CHECK(iso(date_of(-1)) == "1969-12-31");
  CHECK(iso(date_of(-86400)) == "1969-12-31");
}
