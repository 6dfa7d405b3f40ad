#include <algorithm>
#include <map>

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

std::vector<Words> lines(const ComposeInput& in, const CalendarDay& day) {
  std::vector<Words> said;
  for (const CalendarTask& task : day.tasks) {
    const std::string amount = said_amount(task, in.wording);
    said.push_back(plain(said_short(task, in.wording) + (amount.empty() ? "" : ' ' + amount)));
  }
  return said;
}

Cell cell(const ComposeInput& in, Date date, const CalendarDay* day) {
  Cell c;
  c.day = in.wording.amount(date, "short");
  if (!day) return c;
  c.milestone = is_milestone(in, *day);
  c.lines = lines(in, *day);
  return c;
}

CalendarGrid::State state_of(const ComposeInput& in, Date date, const Range<Date>& days) {
  using State = CalendarGrid::State;
  if (date < days.low || date > days.high) return State::outside;
  return in.build.shop.closed[static_cast<size_t>(weekday(date))] ? State::closed : State::open;
}

// Whole weeks from Monday, from the first day of the plan to its last.
CalendarGrid grid(const ComposeInput& in) {
  std::map<Date, const CalendarDay*> days;
  for (const CalendarDay& day : in.plan.calendar) days[day.date] = &day;
  const Date first = days.begin()->first, last = days.rbegin()->first;
  CalendarGrid grid;
  for (int i = 0; i < 7; ++i) {
    grid.weekdays.push_back(in.wording.say("grid.weekday." + std::to_string(i)));
  }
  for (Date monday = plus_days(first, -weekday(first)); monday <= last;
       monday = plus_days(monday, 7)) {
    std::vector<Cell> week;
    for (int i = 0; i < 7; ++i) {
      const Date date = plus_days(monday, i);
      const auto found = days.find(date);
      week.push_back(cell(in, date, found == days.end() ? nullptr : found->second));
      week.back().state = state_of(in, date, {first, last});
    }
    grid.weeks.push_back(std::move(week));
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
