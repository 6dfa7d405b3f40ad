#include "base/fields.h"
#include "check/build.h"
#include "plan/care/care.h"

namespace loamsheet {

void fields(const Step& step, FieldSink& to) {
  to.add("step", step.number);
  to.add("task", step.task);
  if (to.inner()) to.add("group", step.group);
  to.add("after", step.after);
  to.add("minutes", step.minutes);
  to.add("pause", step.pause);
  to.sentence({"words"}, step.sentence, step.args);
}

void fields(const CalendarTask& task, FieldSink& to) {
  to.add("task", task.task);
  if (task.amount.empty()) {
    to.nothing({"amount"});
  } else {
    to.sentence({"amount"}, "calendar.amount." + task.amount, task.args);
  }
  to.sentence({"words"}, "calendar.task." + task.task, task.args);
}

void fields(const CalendarDay& day, FieldSink& to) {
  to.add("day", day.day);
  to.add("date", day.date);
  to.list("tasks", day.tasks);
}

namespace {

// The days that a reason asks for; those of a tank that waits without one are the plan's own.
int days_of(const std::string& reason, const Ready& ready, const Build& build) {
  if (reason == "slipped") return build.identity.slip;
  for (const ReadinessRule& rule : build.rules.readiness) {
    if (rule.id == reason) return rule.days + rule.more + rule.after_acquired;
  }
  return ready.days;
}

}  // namespace

void fields(const Ready& ready, const Build& build, FieldSink& to) {
  to.add("earliest", ready.earliest);
  to.add("days", ready.days);
  to.open_list({"because"});
  for (const std::string& id : ready.because) {
    to.sentence({}, "calendar.because." + id, {{"days", Days{double(days_of(id, ready, build))}}});
  }
  to.close();
}

}  // namespace loamsheet
