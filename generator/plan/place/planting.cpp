#include "plan/place/planting.h"
#include "plan/place/crowns.h"

#include <algorithm>

#include "plan/light/shaded.h"
#include "plan/place/reasons.h"
#include "plan/place/search.h"
#include "plan/place/sites.h"
#include "plan/place/soft_rules.h"

namespace loamsheet {
namespace {

struct Task {
  std::vector<Site> sites;
  std::vector<ToPlace> plants;
};

// What stood first in a place that now holds another plant.
PlantUse as_planted(PlantUse use) {
  if (use.before) use.facts = use.before->facts, use.ppfd = use.before->ppfd;
  return use;
}

// One plant to look at: two of them quarrel. Of several the tallest, of equals the first.
void keep_one_focus(std::vector<ToPlace>& plants) {
  ToPlace* focus = nullptr;
  for (ToPlace& plant : plants) {
    if (!plant.needs.focal) continue;
    plant.needs.focal = false;
    if (!focus || plant.needs.height.high > focus->needs.height.high) focus = &plant;
  }
  if (focus) focus->needs.focal = true;
}

// The task of the planting day: of plants that were replaced, what stood there first.
Task task_of(const Build& build, const LayersPlan& layers) {
  Task task{bare_sites(build, layers), {}};
  for (const PlantUse& use : build.plants) {
    ToPlace plant{needs_in(build, as_planted(use)), use.on, std::nullopt};
    if (use.pinned) {
      plant.fixed = static_cast<int>(task.sites.size());
      task.sites.push_back(pinned_site(build, layers, use));
    }
    task.plants.push_back(std::move(plant));
  }
  keep_one_focus(task.plants);
  return task;
}

bool replaced_any(const Build& build) {
  return std::any_of(build.plants.begin(), build.plants.end(),
                     [](const PlantUse& use) { return use.before.has_value(); });
}

// Whether a plant may stand at a site beside all the others where they are.
bool may_stand(const Task& task, const Placement& placed, size_t plant) {
  const Site& site = task.sites[placed.chosen[plant]->site];
  if (!fits(task.plants[plant].needs, site)) return false;
  for (size_t other = 0; other < task.plants.size(); ++other) {
    if (other == plant || !placed.chosen[other]) continue;
    const Site& at = task.sites[placed.chosen[other]->site];
    if (clash(task.plants[plant].needs, site, task.plants[other].needs, at)) return false;
  }
  return true;
}

// Everything stays where it was planted. A replacement stands where the dead plant stood, when the
// hard rules let it; otherwise it takes the best place that the others leave.
Placement place_anew(const Build& build, Task& task, const Placement& first) {
  for (size_t i = 0; i < task.plants.size(); ++i) {
    const bool replaced = build.plants[i].before.has_value();
    if (replaced) {
      const bool in_focus = task.plants[i].needs.focal;
      task.plants[i].needs = needs_in(build, build.plants[i]);
      task.plants[i].needs.focal &= in_focus;
    }
    if (!first.chosen[i] || task.plants[i].fixed) continue;
    if (!replaced || may_stand(task, first, i)) task.plants[i].fixed = first.chosen[i]->site;
  }
  return place(task.plants, task.sites, lamp_middle(build));
}

bool beside_fixed(const Task& task, const Placement& placed, size_t plant) {
  for (size_t other = 0; other < task.plants.size(); ++other) {
    if (other == plant || !task.plants[other].fixed || !placed.chosen[other]) continue;
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
  if (!task.plants[plant].fixed || !build.plants[plant].pinned) return {};
  const Site& site = task.sites[placed.chosen[plant]->site];
  std::vector<std::string> broken;
  const bool on_floor = site.kind == SiteKind::floor;
  if (on_floor && kept_free(build, {site.at.x, site.at.y})) broken.push_back("keep-out");
  const Needs& needs = task.plants[plant].needs;
  const bool shallow = right_kind(needs, site) && !rooted(needs, site);
  if (!fits(needs, site)) broken.push_back(shallow ? "roots" : "room");
  if (beside_fixed(task, placed, plant)) broken.push_back("distance");
  return broken;
}

// The deepest substrate of the places where its kind grows; a mount, or no place at all, leaves
// nothing to say of it.
Millimetres deepest(const Task& task, const ToPlace& plant) {
  std::optional<Millimetres> most;
  for (const Site& site : task.sites) {
    const bool meant = plant.on.empty() || site.on == plant.on;
    if (!meant || !right_kind(plant.needs, site)) continue;
    if (site.kind == SiteKind::mount) return plant.needs.root;
    most = std::max(most.value_or(Millimetres{}), site.root);
  }
  return most.value_or(plant.needs.root);
}

PlacedPlant unplaced(const PlantUse& use, const Task& task, const ToPlace& wanted) {
  const Needs& needs = wanted.needs;
  PlacedPlant plant;
  plant.number = use.number;
  plant.species = use.facts.id, plant.common_name = use.facts.name;
  plant.botanical = use.facts.botanical;
  plant.spread = needs.spread, plant.height = needs.height.high;
  plant.root_wanted = needs.root, plant.root_there = deepest(task, wanted);
  return plant;
}

// A site as a plant would meet it there: in the shade of its neighbours, each by itself.
Weighed weighed(const Task& task, const Choice& choice) {
  Weighed here{task.sites[choice.site], static_cast<double>(choice.score) / 1e6};
  here.site.light.ppfd *= choice.light_left, here.site.light.dli *= choice.light_left;
  return here;
}

// The crown of each plant that has a place.
std::vector<std::optional<Crown>> crowns_of(const Task& task, const Placement& placed) {
  std::vector<std::optional<Crown>> crowns;
  for (size_t i = 0; i < task.plants.size(); ++i) {
    crowns.emplace_back();
    if (const auto& chosen = placed.chosen[i]) {
      crowns.back() = crown_of(task.plants[i].needs, task.sites[chosen->site]);
    }
  }
  return crowns;
}

void stand(PlacedPlant& plant, const Needs& needs, const Site& site) {
  plant.placed = true;
  plant.at = site.at, plant.site = site.kind, plant.on = site.on;
  plant.light = site.light, plant.humidity = site.humidity;
  plant.height = std::min(needs.height.high, site.headroom);
  plant.root_there = site.kind == SiteKind::mount ? needs.root : site.root;
}

// A plant that stays where it stood is not pinned by the spec, and has its reasons from then.
std::vector<Reason> why(const PlantUse& use, ToPlace plant, const Weighed& here,
                        const std::optional<Weighed>& next) {
  if (!use.pinned) plant.fixed.reset();
  std::vector<Reason> all = reasons(plant, here, next);
  if (!use.before) return all;
  const Reason replaced{"replaced",
                        {{"before", use.before->facts.name}, {"date", *use.replaced_on}}};
  all.insert(all.begin(), replaced);
  return all;
}

}  // namespace

PlantingPlan plan_planting(const Build& build, const LayersPlan& layers, const AirPlan& air) {
  const LightField field(build);
  Task task = task_of(build, layers);
  light_up(task.sites, build, {air, field});
  const Placement first = place(task.plants, task.sites, lamp_middle(build));
  const Placement placed = replaced_any(build) ? place_anew(build, task, first) : first;
  const auto crowns = crowns_of(task, placed);
  PlantingPlan plan;
  for (size_t i = 0; i < build.plants.size(); ++i) {
    const PlantUse& use = build.plants[i];
    PlacedPlant plant = unplaced(use, task, task.plants[i]);
    if (placed.chosen[i]) {
      Weighed here = weighed(task, *placed.chosen[i]);
      here.site.light = shaded_light(field, {here.site.at, i, crowns});
      const auto& next = (use.before ? placed : first).next[i];
      stand(plant, task.plants[i].needs, here.site);
      plant.crown = *crowns[i], plant.fit = here.fit;
      plant.why =
          why(use, task.plants[i], here, next ? std::optional(weighed(task, *next)) : std::nullopt);
      plant.broken = broken_by_pin(build, task, placed, i);
    }
    plan.plants.push_back(std::move(plant));
  }
  plan.score = static_cast<double>(placed.score) / 1e6;
  plan.bound = static_cast<double>(placed.bound) / 1e6;
  return plan;
}

}  // namespace loamsheet
