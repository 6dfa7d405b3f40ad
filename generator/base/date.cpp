#include "base/date.h"

#include <charconv>

#include "base/text.h"

namespace loamsheet {
namespace {

std::optional<int> digits(std::string_view s) {
  int v = 0;
  auto r = std::from_chars(s.data(), s.data() + s.size(), v);
  return r.ec == std::errc() && r.ptr == s.data() + s.size() && s[0] != '-' ? std::optional(v)
                                                                            : std::nullopt;
}

std::string padded(unsigned v, size_t width) {
  std::string s = std::to_string(v);
  return std::string(width - std::min(width, s.size()), '0') + s;
}

}  // namespace

std::optional<Date> parse_date(std::string_view iso) {
  if (iso.size() != 10 || iso[4] != '-' || iso[7] != '-') return std::nullopt;
  const auto y = digits(iso.substr(0, 4)), m = digits(iso.substr(5, 2)),
             d = digits(iso.substr(8, 2));
  if (!y || !m || !d || *y < 1900 || *y > 2199) return std::nullopt;
  const std::chrono::year_month_day ymd{std::chrono::year{*y},
                                        std::chrono::month{static_cast<unsigned>(*m)},
                                        std::chrono::day{static_cast<unsigned>(*d)}};
  return ymd.ok() ? std::optional(Date{std::chrono::sys_days{ymd}}) : std::nullopt;
}

std::string iso(Date date) {
  const std::chrono::year_month_day d{date.day};
  return padded(static_cast<unsigned>(static_cast<int>(d.year())), 4) + '-' +
         padded(static_cast<unsigned>(d.month()), 2) + '-' +
         padded(static_cast<unsigned>(d.day()), 2);
}

Date plus_days(Date d, int days) {
  return {d.day + std::chrono::days{days}};
}

int days_between(Date from, Date to) {
  return static_cast<int>((to.day - from.day).count());
}

int weekday(Date d) {
  return static_cast<int>(std::chrono::weekday{d.day}.iso_encoding()) - 1;
}

long long unix_seconds(Date d) {
  return d.day.time_since_epoch().count() * 86400LL;
}

Date date_of(long long seconds) {
  const long long days = seconds / 86400 - (seconds % 86400 < 0 ? 1 : 0);
  return {std::chrono::sys_days{std::chrono::days{days}}};
}

}  // namespace loamsheet
