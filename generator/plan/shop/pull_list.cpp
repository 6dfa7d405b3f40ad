#include "plan/shop/shop.h"

#include <algorithm>

#include "plan/fill/fasteners.h"
#include "plan/fill/ground.h"
#include "plan/shop/supplies.h"

namespace loamsheet {
namespace {

class PullList {
 public:
  PullList(const Build& build, const Scheduled& plan) : build_(build), plan_(plan) {}

  std::vector<PullItem> run() {
    add_background();
    add_drainage();
    if (plan_.layers.separator) {
      add("separator", build_.layers.separator->material, cut_area(plan_.cuts, "separator").v,
          "m2");
    }
    add_substrate();
    for (const DosePlan& dose : plan_.doses) add("amendment", dose.material, dose.dose.v, "kg");
    if (plan_.layers.litter) {
      add("litter", build_.layers.litter->bulk.material, plan_.layers.litter->buy.v, "L");
    }
    if (plan_.layers.moss) {
      add("moss", build_.layers.moss->bulk.material, plan_.layers.moss->area.v, "m2");
    }
    add_water_area();
    add_fixing();
    add_living();
    add_furnishings();
    add_equipment();
    add_watering();
    add_supplies();
    return std::move(list_);
  }

 private:
  void add(std::string_view use, std::string_view item, double need, std::string_view unit) {
    if (need <= 0) return;
    list_.push_back({std::string(use), std::string(item), need, std::string(unit), {}, {}});
  }

  // One more piece of what may be on the list already.
  void add_piece(std::string_view use, std::string_view item, double count = 1) {
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
    if (layer.kind->on_supports) {
      add("drainage", layer.kind->item, plan_.layers.drainage->volume / volume({1}, layer.depth),
          "m2");
      add_piece("drainage", "floor-support", plan_.supports->count);
    }
    if (layer.outlet->draws) add_piece("drainage", layer.outlet->item);
  }

  // What fills the pockets is of the same mix.
  void add_substrate() {
    for (const SubstratePart& part : build_.layers.substrate.parts) {
      const Litres need = plan_.layers.substrate.blend * part.share.v;
      add("substrate", part.bulk.material, need.v, "L");
    }
  }

  void add_water_area() {
    if (!plan_.water_area) return;
    add("water", build_.water_area->dam.material, cut_area(plan_.cuts, "dam").v, "m2");
    if (build_.water_area->filter) add_piece("water", "filter");
  }

  void add_fixing() {
    for (const FixingKind& fixing : FixingKind::all()) {
      add("fixing", fixing.item, fixing_needed(fixing, build_, plan_.water_area), fixing.unit);
    }
  }

  void add_living() {
    for (const PlantUse& plant : build_.plants) add_piece("plants", plant.facts.id);
    for (const CrewUse& crew : build_.crew) add_piece("crew", crew.facts.id, crew.cultures);
  }

  void add_furnishings() {
    for (const Furnishing& thing : build_.furnishings) {
      if (thing.kind->is_a_thing()) add_piece("furnishing", thing.kind->item);
    }
  }

  void add_equipment() {
    for (const Lamp& lamp : build_.lamps) add_piece("equipment", lamp.kind->item);
    for (const Heater& heater : build_.heaters) add_piece("equipment", heater.kind->item);
    if (!build_.misting) return;
    add_piece("equipment", build_.misting->by_hand ? "hand-mister" : "mister");
  }

  // Of the first day: for watering in, for the mister and for the water area.
  void add_watering() {
    Litres sum{};
    if (const auto& first = plan_.water.first_watering) sum += first->high;
    if (build_.misting && build_.misting->tank) sum += *build_.misting->tank;
    if (plan_.water_area) sum += plan_.water_area->volume;
    const bool known = !build_.water_source.empty() && build_.water_source != "?";
    add("watering", "water-" + (known ? build_.water_source : "unknown"), sum.v, "L");
  }

  void add_supplies() {
    const auto needs = task_needs(build_, plan_);
    for (const Supply& supply : build_.rules.supplies) {
      const bool needed = std::binary_search(needs.begin(), needs.end(), supply.id);
      if (needed) add_supply(supply, supply_needed(supply, build_, plan_));
    }
  }

  // More of what is on the list already is fetched with it; of a piece, the one that is there
  // serves.
  void add_supply(const Supply& supply, double amount) {
    const auto same = std::find_if(list_.begin(), list_.end(), [&](const PullItem& i) {
      return i.item == supply.id && i.unit == supply.unit;
    });
    if (same == list_.end()) return add("supply", supply.id, amount, supply.unit);
    if (supply.unit != "piece") same->need += amount;
  }

  const Build& build_;
  const Scheduled& plan_;
  std::vector<PullItem> list_;
};

}  // namespace

std::vector<PullItem> pull_list(const Build& build, const Scheduled& plan) {
  return PullList(build, plan).run();
}

bool may_be_there(const PullItem& item) {
  constexpr const char* uses[] = {"furnishing", "equipment", "watering", "supply"};
  return std::find(std::begin(uses), std::end(uses), item.use) != std::end(uses);
}

}  // namespace loamsheet
