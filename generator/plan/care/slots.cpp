#include "plan/care/slots.h"

#include <algorithm>

namespace loamsheet {
namespace {

class Slots {
 public:
  template <class T>
  void add(std::string name, const std::optional<T>& value) {
    if (value) all.emplace_back(std::move(name), *value);
  }
  template <class T>
  void add(std::string name, const T& value) {
    all.emplace_back(std::move(name), value);
  }

  Args all;
};

void add_drainage(const Build& build, const Planted& plan, Slots& slots) {
  if (!plan.layers.drainage) return;
  slots.add("drainage-material", build.layers.drainage.bulk.material);
  slots.add("drainage-volume", plan.layers.drainage->buy);
  slots.add("drainage-depth", build.layers.drainage.depth);
  slots.add("waterline", plan.water.highest_standing);
}

void add_separator(const Build& build, const Planted& plan, Slots& slots) {
  if (!plan.layers.separator) return;
  slots.add("separator-material", build.layers.separator->material);
  slots.add("separator-width", plan.layers.separator->cut_width);
  slots.add("separator-depth", plan.layers.separator->cut_depth);
}

void add_substrate(const Build& build, const Planted& plan, Slots& slots) {
  slots.add("substrate-volume", plan.layers.substrate.blend);
  slots.add("substrate-front", build.layers.substrate.front);
  slots.add("substrate-back", build.layers.substrate.back);
}

void add_litter(const Build& build, const Planted& plan, Slots& slots) {
  if (!plan.layers.litter) return;
  slots.add("litter-material", build.layers.litter->bulk.material);
  slots.add("litter-volume", plan.layers.litter->buy);
}

void add_moss(const Build& build, const Planted& plan, Slots& slots) {
  if (!plan.layers.moss) return;
  slots.add("moss-material", build.layers.moss->bulk.material);
  slots.add("moss-area", plan.layers.moss->area);
}

void add_dam(const Planted& plan, Slots& slots) {
  if (!plan.water_area) return;
  slots.add("dam-length", plan.water_area->dam_length);
  slots.add("dam-height", plan.water_area->dam_height);
}

}  // namespace

Args slot_args(const std::vector<std::string>& names, const Build& build, const Planted& plan) {
  Slots slots;
  if (build.enclosure.background) {
    slots.add("background-material", build.enclosure.background->material);
  }
  add_drainage(build, plan, slots);
  add_separator(build, plan, slots);
  add_substrate(build, plan, slots);
  add_litter(build, plan, slots);
  add_moss(build, plan, slots);
  add_dam(plan, slots);
  slots.add("first-watering", plan.water.first_watering);
  std::erase_if(slots.all, [&](const auto& slot) {
    return std::find(names.begin(), names.end(), slot.first) == names.end();
  });
  return std::move(slots.all);
}

}  // namespace loamsheet
