// date: civil dates after ISO 8601, no clock and no time zone.
#pragma once
#include <chrono>
#include <compare>
#include <optional>
#include <string>
#include <string_view>

namespace loamsheet {

struct Date {
  std::chrono::sys_days day{};
  auto operator<=>(const Date&) const = default;
};

// "2026-03-07"; nothing when the text is not a real day of the years 1900 to 2199.
std::optional<Date> parse_date(std::string_view iso);
std::string iso(Date);
Date plus_days(Date, int days);
int days_between(Date from, Date to);

// Monday 0 to Sunday 6.
int weekday(Date);

// Seconds since 1970-01-01 00:00 UTC, and the date that holds them.
long long unix_seconds(Date);
Date date_of(long long unix_seconds);

}  // namespace loamsheet
