#include <algorithm>
#include <set>

#include "plan/fit.h"
#include "plan/fit_body.h"
#include "plan/fit_weight.h"
#include "plan/placement_constants.h"

namespace loamsheet {
namespace {

struct Pair {
  const Build& build;
  const PlantUse& plant;
  const KeptAnimal& animal;
};

Finding about(const Pair& pair, Weight weight, const std::string& rule, const Origins& origins) {
  return {weight,
          rule,
          pair.plant.where,
          {{"plant", pair.plant.facts.name},
           {"animal", pair.animal.facts.name},
           {"source", sources_of(pair.build, origins)}}};
}

// One way in which a hazard reaches an animal: how heavily it weighs, and on what facts of the
// animal that rests.
struct Way {
  Gravity (*gravity)(const Pair&, const HazardRule&);
  Origins (*of_animal)(const KeptAnimal&);
};

const HazardRule* rule_of(const Build& build, const Hazard& hazard) {
  const auto found = build.hazards.find(hazard.kind);
  return found == build.hazards.end() ? nullptr : &found->second;
}

// The hazards of a plant. What poison lists say of it in general stands behind the cause that is
// known to explain it, and lends that its better origin.
std::vector<Hazard> hazards_of(const Pair& pair) {
  std::vector<Hazard> all = pair.plant.facts.hazards;
  std::set<std::string> explained;
  for (Hazard& hazard : all) {
    const HazardRule* rule = rule_of(pair.build, hazard);
    if (!rule || rule->explains.empty()) continue;
    for (const Hazard& general : pair.plant.facts.hazards) {
      if (general.kind != rule->explains) continue;
      if (hazard.origin.from_memory()) hazard.origin = general.origin;
      explained.insert(general.kind);
    }
  }
  std::erase_if(all, [&](const Hazard& hazard) { return explained.contains(hazard.kind); });
  return all;
}

// The weightiest hazard on that way, the first of them when they weigh the same.
Found worst(const Pair& pair, const Way& way, const std::string& rule) {
  Found found;
  for (const Hazard& hazard : hazards_of(pair)) {
    const HazardRule* row = rule_of(pair.build, hazard);
    if (!row) continue;
    Origins origins{row->origin, hazard.origin};
    for (const Origin& origin : way.of_animal(pair.animal)) origins.push_back(origin);
    const auto weight = weight_of(way.gravity(pair, *row), origins);
    if (!weight || (!found.empty() && found[0].weight <= *weight)) continue;
    found = {about(pair, *weight, rule, origins)};
    found[0].args.emplace_back("hazard", hazard.kind);
  }
  return found;
}

std::string browses(const KeptAnimal& animal) {
  return animal.facts.browses ? animal.facts.browses->value : "";
}

// What cannot get at a plant meets no more of it than what eats no leaves.
Gravity eaten_gravity(const Pair& pair, const HazardRule& rule) {
  const bool reached = !out_of_reach(pair.build, pair.plant, pair.animal);
  const auto found = rule.eaten.find(reached ? browses(pair.animal) : "no");
  return found == rule.eaten.end() ? Gravity::none : found->second;
}

Origins eating_origins(const KeptAnimal& animal) {
  if (!animal.facts.browses) return {};
  return {animal.facts.browses->origin};
}

// Who eats leaves as food must not find poison; who tries them should not; who eats insects meets
// it only through the insects.
Found eaten(const Pair& pair) {
  const bool reached = !out_of_reach(pair.build, pair.plant, pair.animal);
  const std::string eats = reached ? browses(pair.animal) : "no";
  const char* rule = eats == "yes"            ? "plant-poisons-browser"
                     : eats == "incidentally" ? "plant-harms-nibbler"
                                              : "plant-harms-prey";
  return worst(pair, {eaten_gravity, eating_origins}, rule);
}

Gravity touch_gravity(const Pair& pair, const HazardRule& rule) {
  const auto wear = pair.animal.facts.wear;
  return wear && wear->value == 1 ? rule.light : rule.touch;
}

Gravity skin_gravity(const Pair&, const HazardRule& rule) {
  return rule.skin;
}

Origins no_origins(const KeptAnimal&) {
  return {};
}

Origins skin_origins(const KeptAnimal& animal) {
  return {animal.facts.body.skin_takes_up->origin};
}

Found sharp(const Pair& pair) {
  return worst(pair, {touch_gravity, no_origins}, "plant-sharp");
}

Found irritant(const Pair& pair) {
  if (!holds(pair.animal.facts.body.skin_takes_up)) return {};
  return worst(pair, {skin_gravity, skin_origins}, "plant-irritates-skin");
}

// What is grown to be eaten is none the worse for it.
bool grazed(const Pair& pair) {
  return browses(pair.animal) == "yes" && holds(pair.plant.facts.edible);
}

// Too delicate is a risk that may be taken; two grades short under a heavy climber's claws is a
// plant lost. One that bears the animal as it is now is outgrown later.
Found delicate(const Pair& pair) {
  const auto& robustness = pair.plant.facts.robustness;
  const auto wear = wear_grown(pair.animal);
  if (!robustness || !wear || robustness->value >= wear->value) return {};
  if (out_of_reach(pair.build, pair.plant, pair.animal)) return {};
  const Origins origins{robustness->origin, wear->origin};
  if (grazed(pair)) {
    return {about(pair, Weight::note, "plant-grazed", {pair.plant.facts.edible->origin})};
  }
  const bool outgrown = robustness->value >= wear_now(pair.animal).value_or(wear->value);
  const bool lost = wear->value - robustness->value >= 2 && heavy_clawed_climber(pair.animal);
  const Weight weight = lost && !outgrown ? held(Weight::stop, origins) : Weight::caution;
  Finding found = about(pair, weight, outgrown ? "plant-outgrown" : "plant-too-delicate", origins);
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
  const auto& held = hot ? day : night;
  const auto& limit = hot ? plant.warmest : plant.coldest;
  Finding found = about(pair, Weight::caution, hot ? "plant-too-hot" : "plant-too-cold",
                        {limit->origin, held->origin});
  found.args.emplace_back("held", held->value);
  found.args.emplace_back("limit", limit->value);
  return {std::move(found)};
}

Found air_too_dry(const Pair& pair) {
  const auto& wanted = pair.plant.facts.humidity;
  const auto& kept = pair.animal.facts.humidity;
  if (is_dry(pair.build.kind) || !wanted || !kept || kept->value.high >= wanted->value) return {};
  Finding found = about(pair, Weight::caution, "plant-air-too-dry", {wanted->origin, kept->origin});
  found.args.emplace_back("held", kept->value);
  found.args.emplace_back("limit", wanted->value);
  return {std::move(found)};
}

bool wants_dry(const Plant& plant) {
  return plant.moisture && plant.moisture->value == "dry" && !holds(plant.mountable);
}

bool wants_wet(const Plant& plant) {
  const bool roots =
      plant.moisture && (plant.moisture->value == "moist" || plant.moisture->value == "wet");
  return roots || (plant.humidity && plant.humidity->value >= Fraction{0.60});
}

// By its kind, or by the air that an animal is kept in.
bool stands_wet(const Build& build) {
  const bool damp = std::any_of(build.kept.begin(), build.kept.end(), [](const KeptAnimal& animal) {
    const auto& humidity = animal.facts.humidity;
    return humidity && humidity->value.low >= constants::damp_air;
  });
  return build.kind == BuildKind::humid || build.kind == BuildKind::semi_aquatic ||
         (damp && !is_dry(build.kind));
}

Found wrong_build(const PlantUse& use, const Build& build) {
  const bool dry = is_dry(build.kind) && wants_wet(use.facts);
  const bool wet = stands_wet(build) && wants_dry(use.facts);
  if (!dry && !wet) return {};
  return {{Weight::caution,
           dry ? "plant-too-dry" : "plant-too-wet",
           use.where,
           {{"plant", use.facts.name}}}};
}

Suits verdict(const Found& reasons) {
  const auto any = [&](Weight weight) {
    return std::any_of(reasons.begin(), reasons.end(),
                       [&](const Finding& f) { return f.weight == weight; });
  };
  if (any(Weight::stop)) return Suits::no;
  return any(Weight::caution) ? Suits::with_caution : Suits::yes;
}

// Plants of one entry are alike: what is said of the first holds for all.
bool said_already(const Build& build, size_t plant) {
  return plant > 0 && build.plants[plant].where == build.plants[plant - 1].where &&
         build.plants[plant].where.line > 0;
}

// What was bought may carry what it was sprayed with. Said once, of the animal that it weighs most
// for.
Found residue(const Build& build) {
  const auto row = build.hazards.find("pesticide-residue");
  Found found;
  if (build.plants.empty() || row == build.hazards.end()) return found;
  for (const KeptAnimal& animal : build.kept) {
    const Pair pair{build, build.plants.front(), animal};
    const auto weight = weight_of(eaten_gravity(pair, row->second), {row->second.origin});
    if (!weight || (!found.empty() && found[0].weight <= *weight)) continue;
    found = {about(pair, *weight, "plant-residue", {row->second.origin})};
  }
  return found;
}

}  // namespace

Suitability suitability(const Build& build, const PlantUse& plant) {
  Suitability result;
  for (const KeptAnimal& animal : build.kept) {
    const Pair pair{build, plant, animal};
    for (const auto rule : {eaten, sharp, irritant, delicate, wrong_heat, air_too_dry}) {
      append(result.reasons, rule(pair));
    }
  }
  append(result.reasons, wrong_build(plant, build));
  std::stable_sort(result.reasons.begin(), result.reasons.end(),
                   [](const Finding& a, const Finding& b) { return a.weight < b.weight; });
  result.suits = verdict(result.reasons);
  return result;
}

Suitability suitability(const Build& build, const Plant& plant, const Span& where) {
  PlantUse use;
  use.facts = plant;
  use.where = where;
  return suitability(build, use);
}

Found plant_fit(const Build& build) {
  Found all = residue(build);
  for (size_t i = 0; i < build.plants.size(); ++i) {
    if (!said_already(build, i)) append(all, suitability(build, build.plants[i]).reasons);
  }
  return all;
}

}  // namespace loamsheet
