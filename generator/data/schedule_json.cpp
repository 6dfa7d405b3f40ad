#include "data/schedule_json.h"

#include "compose/schedule.h"

namespace loamsheet {
namespace {

// The days that a reason asks for; those of a tank that waits without one are the plan's own.
int days_of(const std::string& reason, const PlannedBuild& p) {
  if (reason == "slipped") return p.build.identity.slip;
  for (const ReadinessRule& rule : p.build.rules.readiness) {
    if (rule.id == reason) return rule.days + rule.more + rule.after_acquired;
  }
  return p.plan.ready.days;
}

Json tasks_json(const CalendarDay& day, const Wording& wording) {
  Json tasks = Json::array();
  for (const CalendarTask& task : day.tasks) {
    const std::string amount = said_amount(task, wording);
    tasks.push_back({{"task", task.task},
                     {"amount", amount.empty() ? Json(nullptr) : Json(amount)},
                     {"words", said(task, wording)}});
  }
  return tasks;
}

}  // namespace

Json order_json(const PlannedBuild& p) {
  Json list = Json::array();
  for (const Step& step : p.plan.order) {
    list.push_back({{"step", step.number},
                    {"task", step.task},
                    {"after", step.after},
                    {"minutes", step.minutes},
                    {"pause", step.pause},
                    {"words", said(step, p.wording)}});
  }
  return list;
}

Json calendar_json(const PlannedBuild& p) {
  Json list = Json::array();
  for (const CalendarDay& day : p.plan.calendar) {
    list.push_back(
        {{"day", day.day}, {"date", iso(day.date)}, {"tasks", tasks_json(day, p.wording)}});
  }
  return list;
}

Json ready_json(const PlannedBuild& p) {
  Json because = Json::array();
  for (const std::string& id : p.plan.ready.because) {
    because.push_back(
        p.wording.say("calendar.because." + id, {{"days", Days{double(days_of(id, p))}}}));
  }
  return {
      {"earliest", iso(p.plan.ready.earliest)}, {"days", p.plan.ready.days}, {"because", because}};
}

}  // namespace loamsheet
