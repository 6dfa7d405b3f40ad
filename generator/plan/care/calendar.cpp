#include "plan/care/calendar.h"

#include <algorithm>
#include <map>

#include "plan/care/care.h"
#include "plan/care/constants.h"

namespace loamsheet {
namespace {

class Planner {
 public:
  Planner(const Build& build, const Scheduled& plan)
      : build_(build),
        plan_(plan),
        last_(last_day(build, plan.ready)),
        lead_up_(lead_up_days(build)) {}

  std::vector<CalendarDay> days() {
    const auto& rules = build_.rules.care;
    for (size_t i = 0; i < rules.size(); ++i) {
      if (lead_up_[i]) {
        put(rules[i], *lead_up_[i], rules[i].on);
      } else if (applies(rules[i].when, build_)) {
        repeat(rules[i]);
      }
    }
    std::vector<CalendarDay> out;
    for (auto& [day, tasks] : tasks_) {
      out.push_back({day, plus_days(build_.identity.plant_on, day), std::move(tasks)});
    }
    return out;
  }

 private:
  // The days that a rule counts from.
  std::vector<int> anchors(CareRule::From from) const {
    const Identity& id = build_.identity;
    if (from == CareRule::From::replacement) return replacement_days(build_);
    if (from == CareRule::From::ready) return {plan_.ready.days};
    const bool moves = from == CareRule::From::move && id.moves_on;
    return {moves ? days_between(id.plant_on, *id.moves_on) : 0};
  }

  // The days between which a rule may be done.
  Window window(const CareRule& rule, int anchor) const {
    int low = anchor + rule.on, high = rule.to ? anchor + *rule.to : last_;
    // What comes before the move or the readiness may be done earlier, but not before planting.
    if (rule.on < 0 && !rule.to) low = 0, high = anchor + rule.on;
    if (rule.while_empty) high = std::min(high, plan_.ready.days - 1);
    return {low, std::min(high, last_)};
  }

  // Dates that are still to come when plants were replaced move by the slip; what comes again and
  // again goes on without a gap.
  int slipped(const CareRule& rule, int day) const {
    const Identity& id = build_.identity;
    const bool to_come = id.done_until && day > days_between(id.plant_on, *id.done_until);
    return to_come && rule.every == 0 && rule.from == CareRule::From::planting ? id.slip : 0;
  }

  void repeat(const CareRule& rule) {
    for (const int anchor : anchors(rule.from)) repeat(rule, anchor);
  }

  // A mist tank is filled as often as it wants it, and before the water in it is stale.
  CareRule as_lasting(CareRule rule) const {
    if (rule.amount != "fill-every" || !plan_.upkeep) return rule;
    const std::optional<int> lasts = tank_lasts(*plan_.upkeep);
    if (lasts) rule.on = rule.every = std::min(*lasts, constants::stale_after);
    return rule;
  }

  void repeat(const CareRule& as_written, int from) {
    const CareRule rule = as_lasting(as_written);
    from += slipped(rule, from + rule.on);
    const Window window = this->window(rule, from);
    int done = window.low - rule.every;
    for (int due = rule.on; from + due <= window.high; due += rule.every) {
      const int day = moved(rule, from + due, window);
      // What was put off is not done again right after.
      const int named = rule.from == CareRule::From::replacement ? from + due : due;
      if (from + due >= 0 && 2 * (day - done) >= rule.every) put(rule, done = day, named);
      if (rule.every == 0) break;
    }
  }

  int moved(const CareRule& rule, int day, const Window& window) const {
    return rule.moves ? open_day(build_, day, window, rule.on < 0) : day;
  }

  void put(const CareRule& rule, int day, int due) {
    CalendarTask task;
    task.task = rule.id, task.amount = rule.amount;
    task.due = due, task.milestone = rule.milestone;
    auto& tasks = tasks_[day];
    const bool there = std::any_of(tasks.begin(), tasks.end(), [&](const CalendarTask& other) {
      return other.task == rule.id;
    });
    if (!there && fill_amount(build_, plan_, day, task)) tasks.push_back(std::move(task));
    if (tasks.empty()) tasks_.erase(day);
  }

  const Build& build_;
  const Scheduled& plan_;
  int last_;
  std::vector<std::optional<int>> lead_up_;
  std::map<int, std::vector<CalendarTask>> tasks_;
};

}  // namespace

int last_day(const Build& build, const Ready& ready) {
  return std::max(build.calendar_days.value_or(0), ready.days);
}

std::vector<CalendarDay> plan_calendar(const Build& build, const Scheduled& plan) {
  return Planner(build, plan).days();
}

}  // namespace loamsheet
