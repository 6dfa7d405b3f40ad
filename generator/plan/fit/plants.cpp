#include <algorithm>
#include <set>

#include "plan/fit/body.h"
#include "plan/fit/constants.h"
#include "plan/fit/fit.h"
#include "plan/fit/grounds.h"

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

// A source names the plant among those that the animal's keepers grow with it.
bool planted_with(const Pair& pair) {
  const auto& plants = pair.animal.facts.planted_with;
  if (!plants) return false;
  return std::find(plants->value.begin(), plants->value.end(), pair.plant.facts.id) !=
         plants->value.end();
}

// Who eats leaves as food must not find poison, but for what its keepers are known to grow with
// it; who tries them should not; who eats insects meets it only through the insects.
Found eaten(const Pair& pair) {
  const bool reached = !out_of_reach(pair.build, pair.plant, pair.animal);
  const std::string eats = reached ? browses(pair.animal) : "no";
  const char* rule = eats == "yes"            ? "plant-poisons-browser"
                     : eats == "incidentally" ? "plant-harms-nibbler"
                                              : "plant-harms-prey";
  Found found = worst(pair, {eaten_gravity, eating_origins}, rule);
  if (found.empty() || found[0].weight != Weight::stop || !planted_with(pair)) return found;
  found[0].weight = Weight::caution;
  found[0].rule = "plant-kept-with-browser";
  const Origin& keepers = pair.animal.facts.planted_with->origin;
  found[0].args.emplace_back("keepers", sources_of(pair.build, {keepers}));
  return found;
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

Gravity sap_gravity(const Pair&, const HazardRule& rule) {
  return rule.sap;
}

// A light animal breaks no stems.
Found burning(const Pair& pair) {
  const auto wear = wear_grown(pair.animal);
  if (holds(pair.animal.facts.body.skin_takes_up) || !wear || wear->value <= 1) return {};
  return worst(pair, {sap_gravity, no_origins}, "plant-sap-burns");
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

// The day that a plant meets everywhere. Where the animal basks there is a cool side to plant;
// where it does not, all of the tank takes part in what is stated.
Celsius day_everywhere(const Animal& animal) {
  const Range<Celsius>& day = animal.day->value;
  return animal.basking ? day.low : Celsius{(day.low.v + day.high.v) / 2};
}

// No side of a tank is warmer than the coldest of its nights.
Found wrong_heat(const Pair& pair) {
  const Plant& plant = pair.plant.facts;
  const Animal& animal = pair.animal.facts;
  const bool hot = plant.warmest && animal.day && day_everywhere(animal) > plant.warmest->value;
  const bool cold = plant.coldest && animal.night && animal.night->value.low < plant.coldest->value;
  if (!hot && !cold) return {};
  const auto& held = hot ? animal.day : animal.night;
  const auto& limit = hot ? plant.warmest : plant.coldest;
  Finding found = about(pair, Weight::caution, hot ? "plant-too-hot" : "plant-too-cold",
                        {limit->origin, held->origin});
  found.args.emplace_back("held", held->value);
  found.args.emplace_back("limit", limit->value);
  return {std::move(found)};
}

Fraction middle(const Range<Fraction>& range) {
  return Fraction{(range.low.v + range.high.v) / 2};
}

Found wrong_air(const Pair& pair, const char* rule, const Fact<Fraction>& limit) {
  const auto& kept = *pair.animal.facts.humidity;
  Finding found = about(pair, Weight::caution, rule, {limit.origin, kept.origin});
  found.args.emplace_back("held", kept.value);
  found.args.emplace_back("limit", limit.value);
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

// In a dry build the damper end of what is stated is that of a damp hide, not of the open; what
// wants more than such a build ever has is said of it as a whole.
Found air_too_dry(const Pair& pair) {
  const auto& wanted = pair.plant.facts.humidity;
  const auto& kept = pair.animal.facts.humidity;
  const bool dry = is_dry(pair.build.kind);
  if (!wanted || !kept || (dry && wants_wet(pair.plant.facts))) return {};
  if ((dry ? middle(kept->value) : kept->value.high) >= wanted->value) return {};
  return wrong_air(pair, "plant-air-too-dry", *wanted);
}

Found air_too_damp(const Pair& pair) {
  const auto& borne = pair.plant.facts.dampest;
  const auto& kept = pair.animal.facts.humidity;
  if (!borne || !kept || middle(kept->value) <= borne->value) return {};
  return wrong_air(pair, "plant-air-too-damp", *borne);
}

// Bog plants outside a damp build, by the air that each animal is kept in.
bool too_dry_for_bog(const Build& build, const Plant& plant) {
  if (!plant.moisture || plant.moisture->value != "wet") return false;
  return std::any_of(build.kept.begin(), build.kept.end(), [](const KeptAnimal& animal) {
    const auto& humidity = animal.facts.humidity;
    return humidity && middle(humidity->value) < constants::bog_air;
  });
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
  const bool dry = is_dry(build.kind) ? wants_wet(use.facts) : too_dry_for_bog(build, use.facts);
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
    for (const auto rule :
         {eaten, sharp, irritant, burning, delicate, wrong_heat, air_too_dry, air_too_damp}) {
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
