#include <algorithm>
#include <tuple>

#include "plan/care/order.h"

namespace loamsheet {
namespace {

// The floor is planted in three strips, from the back.
int strip(const Build& build, const PlantStep& plant) {
  const double depth = std::max(build.enclosure.depth.v, 1.0);
  return std::clamp(static_cast<int>(3 * (depth - plant.at.y) / depth), 0, 2);
}

bool comes_before(const Build& build, const PlantStep& a, const PlantStep& b) {
  const auto rank = [&](const PlantStep& p) {
    if (!p.placed) return std::tuple(2, 0.0, 0.0, p.number);
    if (p.site != SiteKind::floor) return std::tuple(0, -p.at.z, 0.0, p.number);
    return std::tuple(1, double(strip(build, p)), -p.height.v, p.number);
  };
  return rank(a) < rank(b);
}

PlantStep step_of(const PlacedPlant& plant) {
  return {plant.number, plant.common_name, plant.site,  plant.on,
          plant.at,     plant.placed,      plant.height};
}

// Before places are found, what the spec pins is all that is known.
PlantStep step_of(const PlantUse& plant) {
  PlantStep step;
  step.number = plant.number, step.name = plant.facts.name, step.on = plant.on;
  if (!plant.on.empty()) step.site = SiteKind::mount;
  if (plant.facts.height) step.height = plant.facts.height->value.high;
  return step;
}

}  // namespace

std::vector<PlantStep> plant_sequence(const Build& build, const Planted& plan) {
  std::vector<PlantStep> plants;
  if (plan.planting) {
    for (const PlacedPlant& plant : plan.planting->plants) {
      if (plant.placed) plants.push_back(step_of(plant));
    }
  } else {
    for (const PlantUse& plant : build.plants) plants.push_back(step_of(plant));
  }
  std::stable_sort(plants.begin(), plants.end(), [&](const PlantStep& a, const PlantStep& b) {
    return comes_before(build, a, b);
  });
  return plants;
}

}  // namespace loamsheet
