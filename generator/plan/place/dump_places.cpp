#include "plan/place/dump_places.h"

#include "base/text.h"

namespace loamsheet {
namespace {

std::string place(const PlacedPlant& plant) {
  if (!plant.placed) return " unplaced";
  constexpr std::string_view kinds[] = {"floor", "pocket", "mount"};
  const Position& at = plant.at;
  return ' ' + std::string(kinds[static_cast<int>(plant.site)]) +
         (plant.on.empty() ? "" : ':' + plant.on) + ' ' + fixed(at.x, 1) + ',' + fixed(at.y, 1) +
         ',' + fixed(at.z, 1) + " ppfd " + fixed(plant.light.ppfd, 1) + " humidity " +
         fixed(plant.humidity.low.v, 3) + ".." + fixed(plant.humidity.high.v, 3);
}

}  // namespace

std::string dump(const PlantingPlan& plan) {
  std::string out =
      "planting score " + fixed(plan.score, 6) + " bound " + fixed(plan.bound, 6) + '\n';
  for (const PlacedPlant& plant : plan.plants) {
    out += "plant " + std::to_string(plant.number) + ' ' + plant.species + place(plant) + " fit " +
           fixed(plant.fit, 6) + '\n';
  }
  return out;
}

}  // namespace loamsheet
