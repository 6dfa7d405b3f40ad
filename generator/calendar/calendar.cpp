#include "calendar/calendar.h"

#include <libical/ical.h>

#include <ctime>
#include <memory>

namespace loamsheet {
namespace {

struct FreeComponent {
  void operator()(icalcomponent* c) const { icalcomponent_free(c); }
};
using Component = std::unique_ptr<icalcomponent, FreeComponent>;

struct FreeText {
  void operator()(char* text) const { icalmemory_free_buffer(text); }
};

// What happens on a day: `task` is the id that its words and its UID are made from.
struct Event {
  std::string task;
  Date on;
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

Args slots(const Input& in) {
  const Identity& identity = in.build.identity;
  return {{"title", identity.title},
          {"reference", identity.reference},
          {"revision", identity.revision},
          {"earliest", in.plan.ready.earliest}};
}

// The end of an all-day event is the day after it (RFC 5545, 3.6.1).
Component event_component(const Input& in, const Event& event) {
  const std::string uid = in.build.identity.reference + '-' + event.task + "@loamsheet";
  const std::string words = "calendar." + event.task;
  const std::string title = in.wording.say(words + ".title", slots(in));
  const std::string text = in.wording.say(words + ".text", slots(in));
  Component component(icalcomponent_new(ICAL_VEVENT_COMPONENT));
  const auto add = [&](icalproperty* p) { icalcomponent_add_property(component.get(), p); };
  add(icalproperty_new_uid(uid.c_str()));
  add(icalproperty_new_dtstamp(in.stamp));
  add(icalproperty_new_dtstart(all_day(event.on)));
  add(icalproperty_new_dtend(all_day(plus_days(event.on, 1))));
  add(icalproperty_new_summary(title.c_str()));
  add(icalproperty_new_description(text.c_str()));
  add(icalproperty_new_transp(ICAL_TRANSP_TRANSPARENT));
  return component;
}

Component calendar_component(const Input& in) {
  Component calendar(icalcomponent_new(ICAL_VCALENDAR_COMPONENT));
  const auto add = [&](icalproperty* p) { icalcomponent_add_property(calendar.get(), p); };
  add(icalproperty_new_prodid("-//loamsheet//loamsheet " LOAMSHEET_VERSION "//EN"));
  add(icalproperty_new_version("2.0"));
  add(icalproperty_new_calscale("GREGORIAN"));
  const Event events[] = {{"planting", in.build.identity.plant_on},
                          {"animal", in.plan.ready.earliest}};
  for (const Event& event : events) {
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
