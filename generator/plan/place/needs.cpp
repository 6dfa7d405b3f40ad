#include "plan/place/needs.h"
#include "plan/place/constants.h"

#include <algorithm>

namespace loamsheet {
namespace {

// Sizes of a habit for a plant whose own are not known.
struct Usual {
  Range<Millimetres> height;
  Millimetres spread, root;
};

template <class T>
bool is(const Known<T>& fact, const T& value) {
  return fact && fact->value == value;
}

bool epiphytic(const Plant& plant) {
  if (!is(plant.mountable, true) || !plant.habit) return false;
  const std::string& habit = plant.habit->value;
  return habit == "epiphyte" || habit == "bromeliad" || habit == "orchid";
}

Habit habit_of(const Plant& plant) {
  const std::string habit = plant.habit ? plant.habit->value : "";
  if (habit == "climber") return Habit::climber;
  if (habit == "trailer" || is<std::string>(plant.role, "trailer")) return Habit::trailer;
  if (habit == "ground-cover") return Habit::creeper;
  if (habit == "moss") return Habit::moss;
  if (epiphytic(plant)) return Habit::epiphyte;
  if (is<std::string>(plant.role, "focal")) return Habit::low;
  const bool between = is<std::string>(plant.role, "middle");
  const Millimetres from = between ? constants::tall_between : constants::tall_plant;
  const bool tall = plant.height && plant.height->value.high >= from;
  const bool unknown_tall = !plant.height && (habit == "shrub" || habit == "upright");
  return tall || unknown_tall ? Habit::tall : Habit::low;
}

Usual usual(Habit habit) {
  switch (habit) {
    case Habit::climber:
    case Habit::trailer:
      return {{Millimetres{}, 300_mm}, 200_mm, 40_mm};
    case Habit::creeper:
      return {{30_mm, 100_mm}, 200_mm, 30_mm};
    case Habit::moss:
      return {{10_mm, 50_mm}, 100_mm, 10_mm};
    case Habit::epiphyte:
      return {{100_mm, 200_mm}, 150_mm, 30_mm};
    case Habit::tall:
      return {{200_mm, 400_mm}, 250_mm, 50_mm};
    case Habit::low:
      break;
  }
  return {{100_mm, 200_mm}, 150_mm, 40_mm};
}

// A rosette or a flower draws the eye, and what builders set for that.
bool shows_off(const Plant& plant) {
  if (plant.role) return plant.role->value == "focal";
  const std::string habit = plant.habit ? plant.habit->value : "";
  return habit == "bromeliad" || habit == "orchid" || habit == "rosette";
}

bool led(Habit habit) {
  return habit == Habit::climber || habit == Habit::trailer;
}

// Climbers and trailers are led along a wall or hang; what spreads wide is trimmed.
Millimetres spread_of(const Plant& plant, Habit habit, const Enclosure& enclosure) {
  if (led(habit)) return usual(habit).spread;
  const Millimetres widest = std::min(enclosure.width, enclosure.depth) * constants::widest_share;
  if (!plant.spread) return std::min(usual(habit).spread, widest);
  const Range<Millimetres>& stated = plant.spread->value;
  return std::min((stated.low + stated.high) / 2, widest);
}

}  // namespace

Needs needs_of(const PlantUse& use, const Enclosure& enclosure) {
  const Plant& plant = use.facts;
  Needs needs;
  needs.habit = habit_of(plant);
  const Usual sizes = usual(needs.habit);
  needs.mountable = is(plant.mountable, true);
  needs.focal = needs.habit == Habit::low && shows_off(plant);
  needs.dry = is<std::string>(plant.moisture, "dry");
  needs.wet = is<std::string>(plant.moisture, "wet") || is<std::string>(plant.moisture, "moist");
  needs.height = plant.height ? plant.height->value : sizes.height;
  if (led(needs.habit)) needs.height.low = Millimetres{};
  needs.spread = spread_of(plant, needs.habit, enclosure);
  needs.root = plant.root_depth ? plant.root_depth->value.low : sizes.root;
  needs.ppfd = use.ppfd;
  if (plant.humidity) needs.humidity = plant.humidity->value;
  return needs;
}

Needs needs_in(const Build& build, const PlantUse& use) {
  Needs needs = needs_of(use, build.enclosure);
  needs.soft = build.soft;
  return needs;
}

}  // namespace loamsheet
