#include <algorithm>

#include "plan/fit/body.h"
#include "plan/fit/constants.h"
#include "plan/fit/fit.h"
#include "plan/fit/grounds.h"

namespace loamsheet {
namespace {

using namespace constants;

// Springtails live in the film of water of a damp substrate; wood lice that only want a damp corner
// find one in a dry build, too.
bool damp_lover(const CrewSpecies& crew) {
  if (!crew.group) return false;
  const std::string& group = crew.group->value;
  return group == "springtail" || group == "dwarf-isopod" || group == "potworm" ||
         group == "earthworm";
}

Found too_dry(const Build& build, const CrewUse& use) {
  if (!is_dry(build.kind) || !damp_lover(use.facts)) return {};
  return {{Weight::caution, "crew-too-dry", use.where, {{"crew", use.facts.name}}}};
}

// In a damp tank, where what an animal leaves rots.
Found missing(const Build& build) {
  if (is_dry(build.kind) || build.kept.empty() || !build.crew.empty()) return {};
  return {{Weight::note, "crew-missing", build.kept.front().where, {}}};
}

// Against the animals' day, for that is what the tank is held at.
Found wrong_heat(const Build& build, const CrewUse& use) {
  const CrewSpecies& crew = use.facts;
  for (const KeptAnimal& kept : build.kept) {
    if (!kept.facts.day) continue;
    const Range<Celsius>& day = kept.facts.day->value;
    const bool hot = crew.warmest && day.low > crew.warmest->value;
    const bool cold = crew.coldest && day.high < crew.coldest->value;
    if (!hot && !cold) continue;
    return {{Weight::caution,
             hot ? "crew-too-hot" : "crew-too-cold",
             use.where,
             {{"crew", crew.name},
              {"animal", kept.facts.name},
              {"day", day},
              {"limit", hot ? crew.warmest->value : crew.coldest->value}}}};
  }
  return {};
}

bool grown_within(const KeptAnimal& animal, Millimetres limit) {
  const auto length = grown_length(animal);
  return length && length->high <= limit;
}

bool lays_in_reach(const KeptAnimal& animal) {
  const auto& lays = animal.facts.lays;
  return lays && (lays->value == "soil" || lays->value == "surface");
}

// Large wood lice bite what cannot get away, and eat eggs.
Found bites(const Build& build, const CrewUse& use) {
  if (!holds(use.facts.harasses)) return {};
  Found found;
  for (const KeptAnimal& animal : build.kept) {
    const bool helpless =
        holds(animal.facts.body.moults_bare) || grown_within(animal, bitten_length);
    if (!helpless && !lays_in_reach(animal)) continue;
    const Weight weight = helpless ? Weight::caution : Weight::note;
    if (!found.empty() && found[0].weight <= weight) continue;
    found = {{weight,
              helpless ? "crew-bites" : "crew-eats-eggs",
              use.where,
              {{"crew", use.facts.name},
               {"animal", animal.facts.name},
               {"source", sources_of(build, {use.facts.harasses->origin})}}}};
  }
  return found;
}

// Small hunters eat a crew faster than it breeds.
Found eaten_out(const Build& build) {
  for (const KeptAnimal& animal : build.kept) {
    const bool hunts = animal.facts.diet && animal.facts.diet->value == "insectivore";
    if (!hunts || build.crew.empty() || !grown_within(animal, eats_crew_length)) continue;
    return {{Weight::note,
             "crew-eaten-out",
             build.crew.front().where,
             {{"animal", animal.facts.name}}}};
  }
  return {};
}

// Droppings of heavy animals are more than a crew takes away.
Found overloaded(const Build& build) {
  double kilograms = 0;
  for (const KeptAnimal& animal : build.kept) {
    kilograms += animal.count * grown_mass(animal).value_or(Kilograms{0}).v;
  }
  const SquareMetres floor = area(build.enclosure.footprint);
  if (floor.v <= 0 || kilograms <= crew_copes_with * floor.v) return {};
  return {{Weight::note,
           "spot-clean",
           build.kept.front().where,
           {{"mass", Kilograms{kilograms}}, {"floor", floor}}}};
}

}  // namespace

Found crew_fit(const Build& build) {
  Found all;
  for (const CrewUse& use : build.crew) {
    append(all, too_dry(build, use));
    append(all, wrong_heat(build, use));
    append(all, bites(build, use));
  }
  append(all, missing(build));
  append(all, eaten_out(build));
  append(all, overloaded(build));
  return all;
}

}  // namespace loamsheet
