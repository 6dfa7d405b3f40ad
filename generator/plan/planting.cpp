#include "plan/planting.h"

#include <algorithm>

#include "plan/placement.h"
#include "plan/placement_rules.h"
#include "plan/reasons.h"
#include "plan/sites.h"

namespace loamsheet {
namespace {

struct Task {
  std::vector<Site> sites;
  std::vector<ToPlace> plants;
};

Task task_of(const Build& build, const LayersPlan& layers) {
  Task task{bare_sites(build, layers), {}};
  for (const PlantUse& use : build.plants) {
    ToPlace plant{needs_of(use, build.enclosure), use.on, std::nullopt};
    if (use.pinned) {
      plant.fixed = static_cast<int>(task.sites.size());
      task.sites.push_back(pinned_site(build, layers, use));
    }
    task.plants.push_back(std::move(plant));
  }
  return task;
}

bool beside_fixed(const Task& task, const Placement& placed, size_t plant) {
  for (size_t other = 0; other < task.plants.size(); ++other) {
    if (other == plant || !task.plants[other].fixed) continue;
    if (clash(task.plants[plant].needs, task.sites[placed.chosen[plant]->site],
              task.plants[other].needs, task.sites[placed.chosen[other]->site])) {
      return true;
    }
  }
  return false;
}

// The hard rules that a pinned plant breaks where it stands.
std::vector<std::string> broken_by_pin(const Build& build, const Task& task,
                                       const Placement& placed, size_t plant) {
  if (!task.plants[plant].fixed) return {};
  const Site& site = task.sites[placed.chosen[plant]->site];
  std::vector<std::string> broken;
  const bool on_floor = site.kind == SiteKind::floor;
  if (on_floor && kept_free(build, {site.at.x, site.at.y})) broken.push_back("keep-out");
  if (!fits(task.plants[plant].needs, site)) broken.push_back("room");
  if (beside_fixed(task, placed, plant)) broken.push_back("distance");
  return broken;
}

PlacedPlant unplaced(const PlantUse& use, const Needs& needs) {
  PlacedPlant plant;
  plant.number = use.number;
  plant.species = use.facts.id, plant.common_name = use.facts.name;
  plant.botanical = use.facts.botanical;
  plant.spread = needs.spread, plant.height = needs.height.high;
  return plant;
}

void stand(PlacedPlant& plant, const Needs& needs, const Site& site) {
  plant.placed = true;
  plant.at = site.at, plant.site = site.kind, plant.on = site.on;
  plant.light = site.light, plant.humidity = site.humidity;
  plant.height = std::min(needs.height.high, site.headroom);
  plant.fit = static_cast<double>(score(needs, site)) / 1e6;
}

}  // namespace

PlantingPlan plan_planting(const Build& build, const LayersPlan& layers, const AirPlan& air) {
  Task task = task_of(build, layers);
  light_up(task.sites, build, air);
  const Placement placed = place(task.plants, task.sites);
  PlantingPlan plan;
  for (size_t i = 0; i < build.plants.size(); ++i) {
    PlacedPlant plant = unplaced(build.plants[i], task.plants[i].needs);
    if (placed.chosen[i]) {
      const Site& site = task.sites[placed.chosen[i]->site];
      stand(plant, task.plants[i].needs, site);
      plant.why = reasons(task.plants[i], site, placed.next[i]);
      plant.broken = broken_by_pin(build, task, placed, i);
    }
    plan.plants.push_back(std::move(plant));
  }
  plan.score = static_cast<double>(placed.score) / 1e6;
  plan.bound = static_cast<double>(placed.bound) / 1e6;
  return plan;
}

}  // namespace loamsheet
