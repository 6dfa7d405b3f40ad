#include <algorithm>
#include <map>

#include "base/text.h"
#include "compose/parts.h"
#include "compose/schedule.h"
#include "compose/words.h"

namespace loamsheet {
namespace {

using Cell = CalendarGrid::Cell;

bool is_milestone(const ComposeInput& in, const CalendarDay& day) {
  return day.day == 0 || day.date == in.plan.ready.earliest ||
         (in.build.identity.moves_on && day.date == *in.build.identity.moves_on);
}

std::vector<std::string> lines(const ComposeInput& in, const CalendarDay& day) {
  std::vector<std::string> said;
  for (const CalendarTask& task : day.tasks) {
    const std::string amount = said_amount(task, in.wording), words = said_short(task, in.wording);
    said.push_back(amount.empty()
                       ? words
                       : in.wording.say("grid.task", {{"task", words}, {"amount", amount}}));
  }
  return said;
}

using Days = std::map<Date, const CalendarDay*>;

std::vector<std::string> lines_on(const ComposeInput& in, const Days& days, Date date) {
  const auto found = days.find(date);
  return found == days.end() ? std::vector<std::string>{} : lines(in, *found->second);
}

constexpr int least_alike = 4;  // days of a week; fewer are told one by one

// What is done alike on each day of a week that the plan covers, in the words of the first.
std::vector<std::string> daily(const ComposeInput& in, const Days& days, Date monday) {
  const Date from = std::max(monday, days.begin()->first);
  const Date to = std::min(plus_days(monday, 6), days.rbegin()->first);
  if (plus_days(from, least_alike - 1) > to) return {};
  std::vector<std::string> alike = lines_on(in, days, from);
  for (Date date = plus_days(from, 1); date <= to; date = plus_days(date, 1)) {
    const auto other = lines_on(in, days, date);
    std::erase_if(alike, [&](const std::string& line) {
      return std::find(other.begin(), other.end(), line) == other.end();
    });
  }
  return alike;
}

CalendarGrid::State state_of(const ComposeInput& in, Date date, const Range<Date>& days) {
  using State = CalendarGrid::State;
  if (date < days.low || date > days.high) return State::outside;
  return in.build.shop.closed[static_cast<size_t>(weekday(date))] ? State::closed : State::open;
}

CalendarGrid::Week week(const ComposeInput& in, const Days& days, Date monday) {
  CalendarGrid::Week week;
  const auto alike = daily(in, days, monday);
  if (!alike.empty()) {
    week.every_day = bold(
        in.wording.say("grid.every-day", {{"tasks", join(alike, in.wording.say("grid.between"))}}));
  }
  const Range<Date> all{days.begin()->first, days.rbegin()->first};
  for (int i = 0; i < 7; ++i) {
    const Date date = plus_days(monday, i);
    Cell cell;
    cell.day = in.wording.amount(date, "short");
    cell.state = state_of(in, date, all);
    if (const auto day = days.find(date); day != days.end()) {
      cell.milestone = is_milestone(in, *day->second);
    }
    for (const std::string& line : lines_on(in, days, date)) {
      if (std::find(alike.begin(), alike.end(), line) == alike.end()) {
        cell.lines.push_back(plain(line));
      }
    }
    week.days.push_back(std::move(cell));
  }
  return week;
}

// Whole weeks from Monday, from the first day of the plan to its last.
CalendarGrid grid(const ComposeInput& in) {
  Days days;
  for (const CalendarDay& day : in.plan.calendar) days[day.date] = &day;
  const Date first = days.begin()->first, last = days.rbegin()->first;
  CalendarGrid grid;
  for (int i = 0; i < 7; ++i) {
    grid.weekdays.push_back(in.wording.say("grid.weekday." + std::to_string(i)));
  }
  for (Date monday = plus_days(first, -weekday(first)); monday <= last;
       monday = plus_days(monday, 7)) {
    grid.weeks.push_back(week(in, days, monday));
  }
  return grid;
}

}  // namespace

Part calendar_page(const ComposeInput& in) {
  const Wording& w = in.wording;
  Part part{"calendar", w.say("sheet.part-calendar"), true, {}};
  part.blocks.push_back(Heading{1, w.say("grid.heading", {{"title", in.build.identity.title}})});
  part.blocks.push_back(grid(in));
  return part;
}

}  // namespace loamsheet
