#include <algorithm>
#include <initializer_list>
#include <string_view>

#include "plan/fit.h"

namespace loamsheet {
namespace {

struct Pair {
  const PlantUse& plant;
  const KeptAnimal& animal;
};

bool from_memory(const Origin& origin) {
  return origin.name == "from memory";
}

// The first hazard among these kinds, a better known one before one from memory.
const Hazard* hazard_among(const Plant& plant, std::initializer_list<std::string_view> kinds) {
  const Hazard* found = nullptr;
  for (const Hazard& hazard : plant.hazards) {
    if (std::find(kinds.begin(), kinds.end(), hazard.kind) == kinds.end()) continue;
    if (!found || (from_memory(found->origin) && !from_memory(hazard.origin))) found = &hazard;
  }
  return found;
}

Finding about(const Pair& pair, Weight weight, const char* rule) {
  return {weight,
          rule,
          pair.plant.where,
          {{"plant", pair.plant.facts.name}, {"animal", pair.animal.facts.name}}};
}

bool eats(const KeptAnimal& animal, std::string_view diet) {
  return animal.facts.diet && animal.facts.diet->value == diet;
}

// Who eats leaves as food must not find poison; who tries them should not; who eats insects meets
// it only through the insects.
Found eaten(const Pair& pair) {
  const Hazard* hazard =
      hazard_among(pair.plant.facts, {"toxic-if-eaten", "calcium-oxalate", "latex-sap", "saponin"});
  if (!hazard || !pair.animal.facts.diet) return {};
  const bool known = !from_memory(hazard->origin) && !from_memory(pair.animal.facts.diet->origin);
  if (eats(pair.animal, "herbivore")) {
    return {about(pair, known ? Weight::stop : Weight::caution, "plant-poisons-browser")};
  }
  if (eats(pair.animal, "omnivore")) return {about(pair, Weight::caution, "plant-harms-nibbler")};
  return {about(pair, Weight::note, "plant-harms-prey")};
}

Found sharp(const Pair& pair) {
  const Plant& plant = pair.plant.facts;
  if (!hazard_among(plant, {"spines", "stiff-tip", "sharp-edge"})) return {};
  return {about(pair, Weight::caution, "plant-sharp")};
}

bool amphibian(const KeptAnimal& animal) {
  if (!animal.facts.group) return false;
  const std::string& group = animal.facts.group->value;
  return group.ends_with("frog") || group.ends_with("toad") || group.ends_with("newt") ||
         group.ends_with("salamander") || group == "mantella";
}

Found irritant(const Pair& pair) {
  const bool sap = hazard_among(pair.plant.facts, {"latex-sap", "calcium-oxalate"});
  if (!amphibian(pair.animal) || !sap) return {};
  return {about(pair, Weight::caution, "plant-irritates-skin")};
}

bool holds(const Known<bool>& fact) {
  return fact && fact->value;
}

// One step short is a risk that may be taken; two, under claws or digging, is a plant lost.
Found delicate(const Pair& pair) {
  const auto &robustness = pair.plant.facts.robustness, &wear = pair.animal.facts.wear;
  if (!robustness || !wear || robustness->value >= wear->value) return {};
  const bool rough = holds(pair.animal.facts.claws) || holds(pair.animal.facts.digs);
  const bool known = !from_memory(robustness->origin) && !from_memory(wear->origin);
  const bool lost = wear->value - robustness->value >= 2 && rough && known;
  Finding found = about(pair, lost ? Weight::stop : Weight::caution, "plant-too-delicate");
  found.args.emplace_back("robustness", robustness->value);
  found.args.emplace_back("wear", wear->value);
  return {std::move(found)};
}

Found wrong_heat(const Pair& pair) {
  const Plant& plant = pair.plant.facts;
  const auto &day = pair.animal.facts.day, &night = pair.animal.facts.night;
  const bool hot = plant.warmest && day && day->value.low > plant.warmest->value;
  const bool cold = plant.coldest && night && night->value.high < plant.coldest->value;
  if (!hot && !cold) return {};
  Finding found = about(pair, Weight::caution, hot ? "plant-too-hot" : "plant-too-cold");
  found.args.emplace_back("held", hot ? day->value : night->value);
  found.args.emplace_back("limit", hot ? plant.warmest->value : plant.coldest->value);
  return {std::move(found)};
}

bool wants_dry(const Plant& plant) {
  const bool mounted = plant.mountable && plant.mountable->value;
  return plant.moisture && plant.moisture->value == "dry" && !mounted;
}

bool wants_wet(const Plant& plant) {
  const bool roots =
      plant.moisture && (plant.moisture->value == "moist" || plant.moisture->value == "wet");
  return roots || (plant.humidity && plant.humidity->value >= Fraction{0.60});
}

Found wrong_build(const PlantUse& use, BuildKind kind) {
  const bool wet_build = kind == BuildKind::humid || kind == BuildKind::semi_aquatic;
  const bool dry = is_dry(kind) && wants_wet(use.facts), wet = wet_build && wants_dry(use.facts);
  if (!dry && !wet) return {};
  return {{Weight::caution,
           dry ? "plant-too-dry" : "plant-too-wet",
           use.where,
           {{"plant", use.facts.name}}}};
}

void append(Found& all, Found more) {
  for (Finding& finding : more) all.push_back(std::move(finding));
}

// Plants of one entry are alike: what is said of the first holds for all.
bool said_already(const Build& build, size_t plant) {
  return plant > 0 && build.plants[plant].where == build.plants[plant - 1].where &&
         build.plants[plant].where.line > 0;
}

}  // namespace

Found plant_fit(const Build& build) {
  Found all;
  for (size_t i = 0; i < build.plants.size(); ++i) {
    if (said_already(build, i)) continue;
    for (const KeptAnimal& animal : build.kept) {
      const Pair pair{build.plants[i], animal};
      for (const auto rule : {eaten, sharp, irritant, delicate, wrong_heat}) {
        append(all, rule(pair));
      }
    }
    append(all, wrong_build(build.plants[i], build.kind));
  }
  return all;
}

}  // namespace loamsheet
