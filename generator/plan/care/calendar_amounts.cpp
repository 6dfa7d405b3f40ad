#include <algorithm>
#include <map>

#include "plan/care/calendar.h"

namespace loamsheet {
namespace {

struct Wanted {
  const Build& build;
  const Scheduled& plan;
  int day;
  CalendarTask& task;

  // Fills the amount's slots, or leaves the task without an amount.
  template <class T>
  bool show(const char* slot, const std::optional<T>& value) const {
    if (value)
      task.args.emplace_back(slot, *value);
    else
      task.amount.clear();
    return true;
  }
};

// By the water plan; without one the leaves are misted as the task's own words say.
bool mist(const Wanted& w) {
  w.task.amount.clear();
  if (!w.plan.upkeep) return true;
  const auto& days = w.plan.upkeep->days;
  const auto found =
      std::find_if(days.begin(), days.end(), [&](const WaterDay& d) { return d.day == w.day; });
  if (found == days.end()) return true;
  if (found->mistings == 0) return false;
  const std::string unit = w.plan.upkeep->by_hand ? "pulls" : "seconds";
  w.task.amount = "mist-" + unit + (found->mistings == 1 ? "-once" : "");
  w.task.args = {{"each", found->each}, {"times", found->mistings}, {"mist", found->mist}};
  return true;
}

bool lamp_hours(const Wanted& w) {
  double longest = 0, shortest = 24;
  for (const Lamp& lamp : w.build.lamps) {
    longest = std::max(longest, lamp.hours);
    shortest = std::min(shortest, lamp.hours);
  }
  w.task.args = {{"longest", longest}, {"shortest", shortest}};
  if (longest != shortest) w.task.amount += "-apart";
  return longest > 0;
}

bool cultures(const Wanted& w, std::string_view group) {
  double sum = 0;
  for (const CrewUse& crew : w.build.crew) {
    const bool meant = crew.facts.group && crew.facts.group->value.ends_with(group);
    if (meant) sum += static_cast<double>(crew.cultures);
  }
  w.task.amount = sum == 1 ? "culture" : "cultures";
  w.task.args = {{"cultures", sum}};
  return sum > 0;
}

bool drainage(const Wanted& w) {
  return w.show("volume", w.plan.layers.drainage ? w.plan.layers.drainage->buy : std::nullopt);
}

bool litter(const Wanted& w) {
  const auto& litter = w.plan.layers.litter;
  return w.show("volume", litter ? std::optional(litter->buy) : std::nullopt);
}

bool substrate(const Wanted& w) {
  return w.show("volume", std::optional(w.plan.layers.substrate.blend));
}

bool fill_every(const Wanted& w) {
  std::optional<double> days;
  if (w.plan.upkeep) days = tank_lasts(*w.plan.upkeep);
  return w.show("days", days);
}

const std::map<std::string, bool (*)(const Wanted&)>& amounts() {
  static const std::map<std::string, bool (*)(const Wanted&)> all{
      {"drainage", drainage},
      {"litter", litter},
      {"substrate", substrate},
      {"first-watering",
       [](const Wanted& w) { return w.show("volume", w.plan.water.first_watering); }},
      {"mist", mist},
      {"lamp-hours", lamp_hours},
      {"fill-every", fill_every},
      {"springtails", [](const Wanted& w) { return cultures(w, "springtail"); }},
      {"isopods", [](const Wanted& w) { return cultures(w, "isopod"); }},
      {"waterline", [](const Wanted& w) { return w.show("level", w.plan.water.highest_standing); }},
  };
  return all;
}

}  // namespace

bool fill_amount(const Build& build, const Scheduled& plan, int day, CalendarTask& task) {
  if (task.amount.empty()) return true;
  const auto found = amounts().find(task.amount);
  return found == amounts().end() || found->second({build, plan, day, task});
}

}  // namespace loamsheet
