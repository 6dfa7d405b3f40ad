#include "compose/schedule.h"

#include "compose/words.h"

namespace loamsheet {

std::string said(const Step& step, const Wording& wording) {
  return wording.say(step.sentence, with_materials_named(step.args, wording));
}

std::string said(const CalendarTask& task, const Wording& wording) {
  return wording.say("calendar.task." + task.task, task.args);
}

std::string said_short(const CalendarTask& task, const Wording& wording) {
  return wording.say("calendar.short." + task.task, task.args);
}

std::string said_amount(const CalendarTask& task, const Wording& wording) {
  if (task.amount.empty()) return "";
  return wording.say("calendar.amount." + task.amount, task.args);
}

}  // namespace loamsheet
