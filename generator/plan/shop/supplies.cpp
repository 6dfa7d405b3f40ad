#include "plan/shop/supplies.h"

#include <algorithm>
#include <set>

#include "plan/care/care.h"

namespace loamsheet {
namespace {

// Work is done when its rule applies, and plants are set one by one.
bool done(const WorkRule& rule, const Build& build) {
  return applies(rule.when, build) && (rule.each.empty() || !build.plants.empty());
}

std::set<std::string> dated_tasks(const Scheduled& plan) {
  std::set<std::string> tasks;
  for (const CalendarDay& day : plan.calendar) {
    for (const CalendarTask& task : day.tasks) tasks.insert(task.task);
  }
  return tasks;
}

double mounts(const Scheduled& plan) {
  if (!plan.planting) return 0;
  const auto& plants = plan.planting->plants;
  return static_cast<double>(std::count_if(plants.begin(), plants.end(), [](const PlacedPlant& p) {
    return p.placed && p.site == SiteKind::mount;
  }));
}

// Lamps of the same hours share a timer.
double lamp_hours(const Build& build) {
  std::set<double> hours;
  for (const Lamp& lamp : build.lamps) hours.insert(lamp.hours);
  return static_cast<double>(hours.size());
}

double thermostats(const Build& build) {
  return static_cast<double>(std::count_if(build.heaters.begin(), build.heaters.end(),
                                           [](const Heater& h) { return h.thermostat; }));
}

double counted(const std::string& per, const Build& build, const Scheduled& plan) {
  if (per == "plant") return static_cast<double>(build.plants.size());
  if (per == "mount") return mounts(plan);
  if (per == "mounted") return std::min(1.0, mounts(plan));
  if (per == "lamp") return static_cast<double>(build.lamps.size());
  if (per == "lamp-hours") return lamp_hours(build);
  return per == "thermostat" ? thermostats(build) : 1;
}

}  // namespace

std::vector<std::string> task_needs(const Build& build, const Scheduled& plan) {
  std::set<std::string> needs;
  for (const WorkRule& rule : build.rules.work) {
    if (done(rule, build)) needs.insert(rule.needs.begin(), rule.needs.end());
  }
  const std::set<std::string> dated = dated_tasks(plan);
  for (const CareRule& rule : build.rules.care) {
    if (dated.contains(rule.id)) needs.insert(rule.needs.begin(), rule.needs.end());
  }
  return {needs.begin(), needs.end()};
}

std::vector<std::string> tools_among(const Build& build, const std::vector<std::string>& needs) {
  std::vector<std::string> tools;
  std::copy_if(build.rules.tools.begin(), build.rules.tools.end(), std::back_inserter(tools),
               [&](const std::string& tool) {
                 return std::binary_search(needs.begin(), needs.end(), tool);
               });
  return tools;
}

double supply_needed(const Supply& supply, const Build& build, const Scheduled& plan) {
  return supply.amount * counted(supply.per, build, plan);
}

}  // namespace loamsheet
