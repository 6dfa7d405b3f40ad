#include "plan/pull_list.h"

#include <algorithm>

#include "plan/fixing.h"
#include "plan/ground.h"

namespace loamsheet {
namespace {

class PullList {
 public:
  PullList(const Build& build, const Plan& plan) : build_(build), plan_(plan) {}

  std::vector<PullItem> run() {
    add_background();
    add_drainage();
    if (plan_.layers.separator) {
      add("separator", build_.layers.separator->material, cut_area(plan_.cuts, "separator").v,
          "m2");
    }
    for (const PartPlan& part : plan_.layers.substrate.parts) {
      add("substrate", part.material, part.buy.v, "L");
    }
    for (const DosePlan& dose : plan_.doses) add("amendment", dose.material, dose.dose.v, "kg");
    if (plan_.layers.litter) {
      add("litter", build_.layers.litter->bulk.material, plan_.layers.litter->buy.v, "L");
    }
    add_water_area();
    add_fixing();
    add_living();
    add_furnishings();
    add_equipment();
    return std::move(list_);
  }

 private:
  void add(const std::string& use, const std::string& item, double need, const std::string& unit) {
    if (need > 0) list_.push_back({use, item, need, unit, {}, {}});
  }

  // One more piece of what may be on the list already.
  void add_piece(const std::string& use, const std::string& item, double count = 1) {
    const auto same = std::find_if(list_.begin(), list_.end(), [&](const PullItem& i) {
      return i.use == use && i.item == item;
    });
    if (same == list_.end()) return add(use, item, count, "piece");
    same->need += count;
  }

  void add_background() {
    const Enclosure& tank = build_.enclosure;
    if (!tank.background) return;
    add("background", tank.background->material, background_area(tank).v, "m2");
  }

  void add_drainage() {
    const DrainageLayer& layer = build_.layers.drainage;
    if (!plan_.layers.drainage) return;
    if (plan_.layers.drainage->buy) {
      add("drainage", layer.bulk.material, plan_.layers.drainage->buy->v, "L");
    }
    if (layer.kind == DrainageKind::raised_floor) {
      add("drainage", "raised-floor", plan_.layers.drainage->volume / volume({1}, layer.depth),
          "m2");
      add_piece("drainage", "floor-support", plan_.supports->count);
    }
    if (layer.outlet != "none") add_piece("drainage", "outlet-" + layer.outlet);
  }

  void add_water_area() {
    if (!plan_.water_area) return;
    add("water", "dam-panel", cut_area(plan_.cuts, "dam").v, "m2");
    if (build_.water_area->filter) add_piece("water", "filter");
  }

  void add_fixing() {
    add("fixing", "silicone", sealant_needed(build_, plan_).v, "L");
    add("fixing", "mounting-foam", foam_needed(build_), "piece");
  }

  void add_living() {
    for (const PlantUse& plant : build_.plants) add_piece("plants", plant.facts.id);
    for (const CrewUse& crew : build_.crew) add_piece("crew", crew.facts.id, crew.cultures);
  }

  void add_furnishings() {
    for (const Furnishing& thing : build_.furnishings) {
      if (thing.kind != "basking-spot") add_piece("furnishing", thing.kind);
    }
  }

  void add_equipment() {
    static constexpr const char* lamps[] = {"lamp-bar", "lamp-panel", "lamp-spot", "lamp-uv-bar",
                                            "lamp-uv-spot"};
    for (const Lamp& lamp : build_.lamps) {
      add_piece("equipment", lamps[static_cast<int>(lamp.kind)]);
    }
    for (const Heater& heater : build_.heaters) add_piece("equipment", "heater-" + heater.kind);
    if (!build_.misting) return;
    add_piece("equipment", build_.misting->by_hand ? "hand-mister" : "mister");
  }

  const Build& build_;
  const Plan& plan_;
  std::vector<PullItem> list_;
};

}  // namespace

std::vector<PullItem> pull_list(const Build& build, const Plan& plan) {
  return PullList(build, plan).run();
}

bool may_be_there(const PullItem& item) {
  return item.use == "furnishing" || item.use == "equipment";
}

}  // namespace loamsheet
