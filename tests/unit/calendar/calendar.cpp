#include "calendar/calendar.h"

#include <catch2/catch.hpp>

#include "base/text.h"

using namespace loamsheet;

namespace {

Wording words(const std::string& description) {
  return Wording({{"calendar.planting.title", "Plant {title}"},
                  {"calendar.planting.text", description},
                  {"calendar.animal.title", "Animal, not before; {reference}"},
                  {"calendar.animal.text", "x"}},
                 UnitSystem::metric);
}

std::string made(const std::string& description) {
  Build build;
  build.identity.title = "Fern ravine";
  build.identity.reference = "TT-0142";
  build.identity.plant_on = *parse_date("2026-12-31");
  Plan plan;
  plan.ready.earliest = *parse_date("2027-01-30");
  const auto calendar = make_calendar(build, plan, words(description), 1'700'000'000);
  REQUIRE(calendar);
  return *calendar.value;
}

// The octets of the longest line, without its line end.
size_t longest_line(const std::string& text) {
  size_t longest = 0;
  for (const std::string& line : split(text, '\n')) longest = std::max(longest, line.size());
  return longest - 1;  // the carriage return
}

std::string unfolded(std::string text) {
  for (size_t at; (at = text.find("\r\n ")) != std::string::npos;) text.erase(at, 3);
  return text;
}

}  // namespace

TEST_CASE("two all-day events, the end being the day after") {
  const std::string text = made("short");
  CHECK(text ==
        "BEGIN:VCALENDAR\r\n"
        "PRODID:-//loamsheet//loamsheet " LOAMSHEET_VERSION
        "//EN\r\n"
        "VERSION:2.0\r\n"
        "CALSCALE:GREGORIAN\r\n"
        "BEGIN:VEVENT\r\n"
        "UID:TT-0142-planting@loamsheet\r\n"
        "DTSTAMP:20231114T221320Z\r\n"
        "DTSTART;VALUE=DATE:20261231\r\n"
        "DTEND;VALUE=DATE:20270101\r\n"
        "SUMMARY:Plant Fern ravine\r\n"
        "DESCRIPTION:short\r\n"
        "TRANSP:TRANSPARENT\r\n"
        "END:VEVENT\r\n"
        "BEGIN:VEVENT\r\n"
        "UID:TT-0142-animal@loamsheet\r\n"
        "DTSTAMP:20231114T221320Z\r\n"
        "DTSTART;VALUE=DATE:20270130\r\n"
        "DTEND;VALUE=DATE:20270131\r\n"
        "SUMMARY:Animal\\, not before\\; TT-0142\r\n"
        "DESCRIPTION:x\r\n"
        "TRANSP:TRANSPARENT\r\n"
        "END:VEVENT\r\n"
        "END:VCALENDAR\r\n");
}

TEST_CASE("lines are folded at 75 octets and unfold to the same words") {
  const std::string description(160, 'x');
  const std::string text = made(description);
  CHECK(longest_line(text) == 75);
  CHECK(unfolded(text).find("DESCRIPTION:" + description + "\r\n") != std::string::npos);
}

TEST_CASE("folding never splits a character of more than one octet") {
  for (int lead = 0; lead < 4; ++lead) {
    std::string description(static_cast<size_t>(lead), 'x');
    for (int i = 0; i < 90; ++i) description += i % 2 ? "é" : "–";
    const std::string text = made(description);
    CHECK(longest_line(text) <= 75);
    for (const std::string& line : split(text, '\n')) CHECK_FALSE(invalid_utf8(line));
    CHECK(unfolded(text).find(description) != std::string::npos);
  }
}

TEST_CASE("the same plan gives the same bytes") {
  CHECK(made("again") == made("again"));
}
