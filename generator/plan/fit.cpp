#include "plan/fit.h"

#include <algorithm>

namespace loamsheet {
namespace {

struct Side {
  const Known<Range<Millimetres>>& wanted;
  Millimetres there;
  const char* rule;
};

Found too_small(const KeptAnimal& kept, const Side& side) {
  if (!side.wanted || side.there >= side.wanted->value.low) return {};
  return {
      {Weight::caution,
       side.rule,
       kept.where,
       {{"animal", kept.facts.name}, {"there", side.there}, {"wanted", side.wanted->value.low}}}};
}

Found room_for(const KeptAnimal& kept, const Enclosure& tank) {
  const Millimetres length = std::max(tank.width, tank.depth);
  const Millimetres width = std::min(tank.width, tank.depth);
  const Side sides[] = {{kept.facts.floor_length, length, "enclosure-too-short"},
                        {kept.facts.floor_width, width, "enclosure-too-narrow"},
                        {kept.facts.headroom, tank.height, "enclosure-too-low"}};
  Found all;
  for (const Side& side : sides) {
    for (Finding& found : too_small(kept, side)) all.push_back(std::move(found));
  }
  return all;
}

Found mixed(const Build& build) {
  for (const KeptAnimal& kept : build.kept) {
    const KeptAnimal& first = build.kept.front();
    if (kept.facts.id == first.facts.id) continue;
    return {{Weight::caution,
             "species-mixed",
             kept.where,
             {{"first", first.facts.name}, {"second", kept.facts.name}}}};
  }
  return {};
}

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

}  // namespace

Found animal_fit(const Build& build) {
  Found all;
  for (const KeptAnimal& kept : build.kept) {
    for (Finding& found : room_for(kept, build.enclosure)) all.push_back(std::move(found));
  }
  for (Finding& found : mixed(build)) all.push_back(std::move(found));
  return all;
}

Found crew_fit(const Build& build) {
  Found all;
  for (const CrewUse& use : build.crew) {
    for (Finding& found : too_dry(build, use)) all.push_back(std::move(found));
    for (Finding& found : wrong_heat(build, use)) all.push_back(std::move(found));
  }
  return all;
}

}  // namespace loamsheet
