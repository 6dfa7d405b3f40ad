#include <algorithm>

#include "check/check.h"
#include "job/begin.h"

namespace loamsheet {
namespace {

constexpr size_t most = 4;
constexpr std::string_view mild[] = {"none-known", "stiff-tip"};  // hazards

bool harmless(const Plant& plant) {
  return !plant.hazards.empty() &&
         std::all_of(plant.hazards.begin(), plant.hazards.end(), [](const Hazard& h) {
           return std::find(std::begin(mild), std::end(mild), h.kind) != std::end(mild);
         });
}

// What is not known does not speak against a plant, but for its strength and its water.
bool stands_place(const Plant& plant, const Starter& s) {
  if (!plant.moisture || (plant.moisture->value == "dry") != is_dry(kind_named(s.kind)))
    return false;
  if (plant.moisture->value == "wet") return false;
  return !plant.height || plant.height->value.high <= s.size.height;
}

bool stands_animal(const Plant& plant, const Animal& animal) {
  if (!plant.robustness || plant.robustness->value < (animal.wear ? animal.wear->value : 3)) {
    return false;
  }
  if (animal.humidity && plant.humidity && plant.humidity->value > animal.humidity->value.high) {
    return false;
  }
  if (animal.night && plant.coldest && plant.coldest->value > animal.night->value.low) return false;
  return !animal.day || !plant.warmest || plant.warmest->value >= animal.day->value.high;
}

}  // namespace

std::vector<std::string> starter_plants(const Starter& s) {
  std::vector<std::string> chosen, habits;
  for (const auto& id : s.catalogue.plants.ids()) {
    const auto plant = read_plant(s.catalogue, id);
    if (chosen.size() == most || !plant || !plant.value->habit) continue;
    const std::string& habit = plant.value->habit->value;
    if (std::find(habits.begin(), habits.end(), habit) != habits.end()) continue;
    if (!harmless(*plant.value) || !stands_place(*plant.value, s)) continue;
    if (s.animal && !stands_animal(*plant.value, *s.animal)) continue;
    chosen.push_back(id);
    habits.push_back(habit);
  }
  return chosen;
}

}  // namespace loamsheet
