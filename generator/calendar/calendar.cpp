#include "calendar/calendar.h"

#include <libical/ical.h>

#include <algorithm>
#include <ctime>
#include <memory>
#include <vector>

#include "compose/schedule.h"

namespace loamsheet {
namespace {

struct FreeComponent {
  void operator()(icalcomponent* c) const { icalcomponent_free(c); }
};
using Component = std::unique_ptr<icalcomponent, FreeComponent>;

struct FreeText {
  void operator()(char* text) const { icalmemory_free_buffer(text); }
};

// What stands in the diary on a day; `task` is what its UID is made from.
struct Event {
  std::string task, title, text;
  Date on;
  bool cancelled = false;
};

struct Input {
  const Build& build;
  const Plan& plan;
  const Wording& wording;
  icaltimetype stamp;
};

icaltimetype all_day(Date date) {
  icaltimetype day = icaltime_from_timet_with_zone(static_cast<time_t>(unix_seconds(date)), 1,
                                                   icaltimezone_get_utc_timezone());
  day.zone = nullptr;
  return day;
}

Args slots(const Input& in, int day) {
  const Identity& identity = in.build.identity;
  return {{"title", identity.title},
          {"reference", identity.reference},
          {"revision", identity.revision},
          {"day", day}};
}

// A sentence and its amount on a line, then the line that says which build it is.
std::string line(const Input& in, const CalendarTask& task) {
  Args args{{"words", said(task, in.wording)}};
  const std::string amount = said_amount(task, in.wording);
  args.emplace_back("amount", amount);
  return in.wording.say(amount.empty() ? "calendar.line" : "calendar.line-with-amount", args);
}

std::string foot(const Input& in, const CalendarDay& day) {
  return '\n' + in.wording.say("calendar.foot", slots(in, day.day));
}

Event milestone(const Input& in, const CalendarDay& day, const CalendarTask& task) {
  Args args = slots(in, day.day);
  const std::string amount = said_amount(task, in.wording);
  args.emplace_back("short", said_short(task, in.wording));
  args.emplace_back("amount", amount);
  const char* title = amount.empty() ? "calendar.event" : "calendar.event-with-amount";
  return {task.task + '-' + std::to_string(task.due), in.wording.say(title, args),
          line(in, task) + foot(in, day), day.date};
}

// What is done as a matter of course shares one event a day, so that a diary stays readable.
Event routine(const Input& in, const CalendarDay& day) {
  std::string tasks, text;
  for (const CalendarTask& task : day.tasks) {
    if (task.milestone) continue;
    if (!tasks.empty()) tasks += in.wording.say("calendar.between"), text += '\n';
    const std::string amount = said_amount(task, in.wording);
    tasks += said_short(task, in.wording) + (amount.empty() ? "" : ' ' + amount);
    text += line(in, task);
  }
  if (tasks.empty()) return {};
  Args args = slots(in, day.day);
  args.emplace_back("tasks", tasks);
  return {"day-" + std::to_string(day.day), in.wording.say("calendar.day", args),
          text + foot(in, day), day.date};
}

std::vector<Event> events(const Input& in, const std::vector<CalendarDay>& days) {
  std::vector<Event> all;
  for (const CalendarDay& day : days) {
    for (const CalendarTask& task : day.tasks) {
      if (task.milestone) all.push_back(milestone(in, day, task));
    }
    if (Event event = routine(in, day); !event.task.empty()) all.push_back(std::move(event));
  }
  return all;
}

// Diaries that took in the revision before hold events that this one has no more: they are called
// off by their UIDs (RFC 5545, 3.8.1.11).
void call_off(const Input& in, std::vector<Event>& all) {
  for (Event& event : events(in, in.plan.calendar_before)) {
    const bool stays =
        std::any_of(all.begin(), all.end(), [&](const Event& e) { return e.task == event.task; });
    if (stays) continue;
    event.cancelled = true;
    all.push_back(std::move(event));
  }
}

// A later revision replaces an earlier one by its sequence (RFC 5545, 3.8.7.4): A is 0, Z 25, AA
// 26; a revision in figures counts by itself.
int sequence(const std::string& revision) {
  constexpr int most = 1'000'000;
  int letters = 0, figures = 0;
  for (const char c : revision) {
    const bool figure = c >= '0' && c <= '9';
    const bool letter = (c >= 'A' && c <= 'Z') || (c >= 'a' && c <= 'z');
    if (figure) figures = std::min(most, figures * 10 + (c - '0'));
    if (letter) letters = std::min(most, letters * 26 + (c & 31));
  }
  return std::max(0, letters - 1) + figures;
}

// The end of an all-day event is the day after it (RFC 5545, 3.6.1).
Component event_component(const Input& in, const Event& event) {
  const std::string uid = in.build.identity.reference + '-' + event.task + "@loamsheet";
  Component component(icalcomponent_new(ICAL_VEVENT_COMPONENT));
  const auto add = [&](icalproperty* p) { icalcomponent_add_property(component.get(), p); };
  add(icalproperty_new_uid(uid.c_str()));
  add(icalproperty_new_dtstamp(in.stamp));
  add(icalproperty_new_sequence(sequence(in.build.identity.revision)));
  add(icalproperty_new_dtstart(all_day(event.on)));
  add(icalproperty_new_dtend(all_day(plus_days(event.on, 1))));
  add(icalproperty_new_summary(event.title.c_str()));
  add(icalproperty_new_description(event.text.c_str()));
  add(icalproperty_new_transp(ICAL_TRANSP_TRANSPARENT));
  if (event.cancelled) add(icalproperty_new_status(ICAL_STATUS_CANCELLED));
  return component;
}

Component calendar_component(const Input& in) {
  Component calendar(icalcomponent_new(ICAL_VCALENDAR_COMPONENT));
  const auto add = [&](icalproperty* p) { icalcomponent_add_property(calendar.get(), p); };
  add(icalproperty_new_prodid("-//loamsheet//loamsheet " LOAMSHEET_VERSION "//EN"));
  add(icalproperty_new_version("2.0"));
  add(icalproperty_new_calscale("GREGORIAN"));
  std::vector<Event> all = events(in, in.plan.calendar);
  call_off(in, all);
  for (const Event& event : all) {
    icalcomponent_add_component(calendar.get(), event_component(in, event).release());
  }
  return calendar;
}

Diagnostic not_made() {
  Diagnostic d;
  d.message = "the calendar could not be made";
  d.fault = Fault::internal;
  return d;
}

}  // namespace

Outcome<std::string> make_calendar(const Build& build, const Plan& plan, const Wording& wording,
                                   long long stamp) {
  const Input input{build, plan, wording,
                    icaltime_from_timet_with_zone(static_cast<time_t>(stamp), 0,
                                                  icaltimezone_get_utc_timezone())};
  const Component calendar = calendar_component(input);
  const std::unique_ptr<char, FreeText> text(icalcomponent_as_ical_string_r(calendar.get()));
  if (!text) return failure<std::string>(not_made());
  return {std::string(text.get()), {}};
}

}  // namespace loamsheet
