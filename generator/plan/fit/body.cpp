#include "plan/fit/body.h"

#include <algorithm>
#include <cmath>

#include "plan/fit/grounds.h"
#include "plan/light/vectors.h"

namespace loamsheet {
namespace {

constexpr int most_wear = 5;
constexpr int many_animals = 4;
constexpr double young_share = 1.0 / 3;
constexpr Kilograms heavy_climber{0.050};
constexpr int heavy_wear = 4;
constexpr Kilograms grades[] = {{0.005}, {0.010}, {0.050}, {0.300}};

int grade_of(Kilograms mass) {
  int grade = 1;
  for (const Kilograms limit : grades) grade += mass > limit ? 1 : 0;
  return grade;
}

// Claws tear, digging uproots, and what jumps lands with more than its weight.
int roughness(const KeptAnimal& animal) {
  const bool rough =
      holds(animal.facts.claws) || holds(animal.facts.digs) || holds(animal.facts.jumps);
  return rough ? 1 : 0;
}

std::optional<Fact<int>> wear_of_one(const KeptAnimal& animal) {
  if (animal.facts.wear) return animal.facts.wear;
  const auto mass = grown_mass(animal);
  if (!mass) return std::nullopt;
  const Origin origin = animal.facts.mass ? animal.facts.mass->origin : Origin{"common practice"};
  return Fact<int>{std::min(most_wear, grade_of(*mass) + roughness(animal)), origin};
}

int of_all(const KeptAnimal& animal, int wear) {
  const bool more = animal.count >= many_animals && wear > 1;
  return std::min(most_wear, wear + (more ? 1 : 0));
}

bool arboreal(const KeptAnimal& animal) {
  return animal.facts.lifestyle && animal.facts.lifestyle->value == "arboreal";
}

// The highest that the ground may lie: what is above it for certain is above it everywhere.
double highest_ground(const Layers& layers) {
  const double litter = layers.litter ? layers.litter->depth.v : 0;
  return layers.drainage.depth.v + std::max(layers.substrate.front.v, layers.substrate.back.v) +
         litter;
}

const Furnishing* thing_under(const Build& build, const PlantUse& plant) {
  const auto found = std::find_if(build.furnishings.begin(), build.furnishings.end(),
                                  [&](const Furnishing& f) { return f.id == plant.on; });
  return found == build.furnishings.end() ? nullptr : &*found;
}

// Where a plant stands that was put on a thing fixed above the ground.
std::optional<Position> foot_of(const Build& build, const PlantUse& plant) {
  const Furnishing* thing = thing_under(build, plant);
  if (!thing || thing->at.z <= 0) return std::nullopt;
  return thing->at;
}

bool climbs_to(const Build& build, const Position& foot, Millimetres reach) {
  const bool by_background =
      build.enclosure.background && build.enclosure.depth.v - foot.y <= reach.v;
  return by_background ||
         std::any_of(build.furnishings.begin(), build.furnishings.end(), [&](const Furnishing& f) {
           return f.kind->climbed && distance(foot, f.from, f.to) <= reach.v;
         });
}

}  // namespace

std::optional<Kilograms> grown_mass(const KeptAnimal& animal) {
  if (!animal.facts.mass) return animal.mass;
  return std::max(animal.mass.value_or(Kilograms{0}), animal.facts.mass->value.high);
}

std::optional<Range<Millimetres>> grown_length(const KeptAnimal& animal) {
  if (!animal.facts.length) return std::nullopt;
  return animal.facts.length->value;
}

std::optional<Millimetres> smallest_length(const KeptAnimal& animal) {
  const auto grown = grown_length(animal);
  if (!animal.juvenile) return grown ? std::optional(grown->low) : std::nullopt;
  const auto& young = animal.facts.young;
  const auto mass = grown_mass(animal);
  if (grown && mass && animal.mass && animal.facts.mass) {
    return grown->high * std::cbrt(*animal.mass / *mass);
  }
  if (young) return young->value.low;
  return grown ? std::optional(grown->low * young_share) : std::nullopt;
}

std::optional<Fact<int>> wear_grown(const KeptAnimal& animal) {
  auto wear = wear_of_one(animal);
  if (wear) wear->value = of_all(animal, wear->value);
  return wear;
}

std::optional<int> wear_now(const KeptAnimal& animal) {
  const auto grown = wear_grown(animal);
  if (!animal.juvenile || !animal.mass) return grown ? std::optional(grown->value) : std::nullopt;
  const int now = of_all(animal, grade_of(*animal.mass) + roughness(animal));
  return grown ? std::min(now, grown->value) : now;
}

bool digs(const KeptAnimal& animal) {
  return animal.facts.digs && animal.facts.digs->value;
}

bool eats_insects(const KeptAnimal& animal) {
  const auto& diet = animal.facts.diet;
  return diet && (diet->value == "insectivore" || diet->value == "omnivore");
}

bool heavy_clawed_climber(const KeptAnimal& animal) {
  if (!holds(animal.facts.claws)) return false;
  const auto& mass = animal.facts.mass;
  const bool known = animal.mass || (mass && !mass->origin.from_memory());
  if (known && *grown_mass(animal) > heavy_climber) return true;
  return animal.facts.wear && animal.facts.wear->value >= heavy_wear;
}

bool out_of_reach(const Build& build, const PlantUse& plant, const KeptAnimal& animal) {
  const auto length = grown_length(animal);
  const auto foot = foot_of(build, plant);
  if (!length || !foot || arboreal(animal)) return false;
  const bool from_ground = foot->z - highest_ground(build.layers) <= length->high.v;
  const bool climbs = holds(animal.facts.claws) || holds(animal.facts.climbs);
  const bool by_climbing = climbs && climbs_to(build, *foot, length->high);
  return !from_ground && !by_climbing;
}

}  // namespace loamsheet
