#include "calendar/calendar.h"

#include <catch2/catch.hpp>
#include <set>

#include "base/text.h"

using namespace loamsheet;

namespace {

// Words as templates hold them; `description` is what the animal's day says.
Wording words(const std::string& description) {
  return Wording({{"calendar.event", "{short}: {title}"},
                  {"calendar.event-with-amount", "{short}, {amount}: {title}"},
                  {"calendar.day", "{tasks}: {title}"},
                  {"calendar.line", "{words}"},
                  {"calendar.line-with-amount", "{words} {amount}."},
                  {"calendar.between", "; "},
                  {"calendar.foot", "{reference}, day {day}."},
                  {"calendar.task.planting", "Plant it."},
                  {"calendar.short.planting", "Planting"},
                  {"calendar.task.water-in", "Water in."},
                  {"calendar.short.water-in", "Water"},
                  {"calendar.task.trim", "Trim it."},
                  {"calendar.short.trim", "Trim"},
                  {"calendar.task.animal", description},
                  {"calendar.short.animal", "Animal, not before; one"},
                  {"calendar.amount.cups", "{cups} cups"},
                  {"units.count", ".0"},
                  {"units.decimal", "."},
                  {"units.range", "{low}–{high}"},
                  {"units.range-signed", "{low} to {high}"}},
                 UnitSystem::metric);
}

CalendarTask task(const std::string& id, bool milestone) {
  CalendarTask task;
  task.task = id, task.milestone = milestone;
  return task;
}

Plan plan_with_dates() {
  Plan plan;
  CalendarDay planting{0, *parse_date("2026-12-31"), {task("planting", true)}};
  CalendarTask water = task("water-in", false);
  water.amount = "cups", water.args = {{"cups", 3}};
  planting.tasks.push_back(water);
  planting.tasks.push_back(task("trim", false));
  plan.calendar = {planting, {30, *parse_date("2027-01-30"), {task("animal", true)}}};
  return plan;
}

std::string made(const std::string& description, const std::string& revision = "A") {
  Build build;
  build.identity.title = "Fern ravine";
  build.identity.reference = "TT-0142";
  build.identity.revision = revision;
  build.identity.plant_on = *parse_date("2026-12-31");
  const auto calendar = make_calendar(build, plan_with_dates(), words(description), 1'700'000'000);
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

std::multiset<std::string> lines_with(const std::string& text, const std::string& start) {
  std::multiset<std::string> found;
  for (const std::string& line : split(unfolded(text), '\n')) {
    if (line.starts_with(start)) found.insert(line);
  }
  return found;
}

}  // namespace

TEST_CASE("milestones stand alone, a day's other work together; the end is the day after") {
  const std::string text = made("Only when signed.");
  CHECK(text ==
        "BEGIN:VCALENDAR\r\n"
        "PRODID:-//loamsheet//loamsheet " LOAMSHEET_VERSION
        "//EN\r\n"
        "VERSION:2.0\r\n"
        "CALSCALE:GREGORIAN\r\n"
        "BEGIN:VEVENT\r\n"
        "UID:TT-0142-planting-0@loamsheet\r\n"
        "DTSTAMP:20231114T221320Z\r\n"
        "SEQUENCE:0\r\n"
        "DTSTART;VALUE=DATE:20261231\r\n"
        "DTEND;VALUE=DATE:20270101\r\n"
        "SUMMARY:Planting: Fern ravine\r\n"
        "DESCRIPTION:Plant it.\\nTT-0142\\, day 0.\r\n"
        "TRANSP:TRANSPARENT\r\n"
        "END:VEVENT\r\n"
        "BEGIN:VEVENT\r\n"
        "UID:TT-0142-day-0@loamsheet\r\n"
        "DTSTAMP:20231114T221320Z\r\n"
        "SEQUENCE:0\r\n"
        "DTSTART;VALUE=DATE:20261231\r\n"
        "DTEND;VALUE=DATE:20270101\r\n"
        "SUMMARY:Water 3 cups\\; Trim: Fern ravine\r\n"
        "DESCRIPTION:Water in. 3 cups.\\nTrim it.\\nTT-0142\\, day 0.\r\n"
        "TRANSP:TRANSPARENT\r\n"
        "END:VEVENT\r\n"
        "BEGIN:VEVENT\r\n"
        "UID:TT-0142-animal-0@loamsheet\r\n"
        "DTSTAMP:20231114T221320Z\r\n"
        "SEQUENCE:0\r\n"
        "DTSTART;VALUE=DATE:20270130\r\n"
        "DTEND;VALUE=DATE:20270131\r\n"
        "SUMMARY:Animal\\, not before\\; one: Fern ravine\r\n"
        "DESCRIPTION:Only when signed.\\nTT-0142\\, day 30.\r\n"
        "TRANSP:TRANSPARENT\r\n"
        "END:VEVENT\r\n"
        "END:VCALENDAR\r\n");
}

TEST_CASE("lines are folded at 75 octets and unfold to the same words") {
  const std::string description(160, 'x');
  const std::string text = made(description);
  CHECK(longest_line(text) == 75);
  CHECK(unfolded(text).find("DESCRIPTION:" + description + "\\n") != std::string::npos);
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

TEST_CASE("a task keeps its UID in every revision, and no two share one") {
  const auto uids = lines_with(made("x", "A"), "UID:");
  CHECK(uids == lines_with(made("y", "B"), "UID:"));
  CHECK(lines_with(made("y", "B"), "SEQUENCE:").contains("SEQUENCE:1\r"));
  CHECK(lines_with(made("y", "AA"), "SEQUENCE:").contains("SEQUENCE:26\r"));
  CHECK(lines_with(made("y", "12"), "SEQUENCE:").contains("SEQUENCE:12\r"));
  CHECK(std::set<std::string>(uids.begin(), uids.end()).size() == uids.size());
}

TEST_CASE("no entry rings an alarm or repeats by a rule") {
  CHECK(made("x").find("VALARM") == std::string::npos);
  CHECK(made("x").find("RRULE") == std::string::npos);
}
