#include "plan/care/care.h"

#include <algorithm>
#include <map>

#include "base/text.h"
#include "plan/fill/fasteners.h"
#include "plan/fill/first_watering.h"
#include "plan/fit/body.h"
#include "plan/fit/constants.h"

namespace loamsheet {
namespace {

using Condition = bool (*)(const Build&);

bool drained(const Build& build) {
  return build.layers.drainage.kind->keeps_water_off;
}

bool stands_on(const Build& build, bool base) {
  return std::any_of(build.standing.begin(), build.standing.end(),
                     [&](const Standing& s) { return s.on_base == base; });
}

template <class Test>
bool any_animal(const Build& build, Test test) {
  return std::any_of(build.kept.begin(), build.kept.end(), test);
}

bool crew_of(const Build& build, std::string_view group) {
  return std::any_of(build.crew.begin(), build.crew.end(), [&](const CrewUse& crew) {
    return crew.facts.group && crew.facts.group->value.ends_with(group);
  });
}

// What the plants will have to bear of one animal, as far as it is known.
Kilograms known_mass(const KeptAnimal& animal) {
  return grown_mass(animal).value_or(Kilograms{0});
}

bool climbs(const KeptAnimal& animal) {
  if (animal.facts.claws && animal.facts.claws->value) return true;
  return animal.facts.lifestyle && animal.facts.lifestyle->value == "arboreal" &&
         known_mass(animal) >= constants::light_climber;
}

bool has_outlet(const Build& build) {
  return drained(build) && build.layers.drainage.outlet->draws;
}

bool any_furnishing(const Build& build, bool (*test)(const Furnishing&)) {
  return std::any_of(build.furnishings.begin(), build.furnishings.end(), test);
}

// Held by what needs no curing.
bool hung(const Furnishing& f) {
  return !f.kind->on_ground() && !bonded(f);
}

bool has_uv_lamp(const Build& build) {
  return std::any_of(build.lamps.begin(), build.lamps.end(),
                     [](const Lamp& lamp) { return lamp.kind->uv; });
}

bool warmed_from_below(const Build& build) {
  return std::any_of(build.heaters.begin(), build.heaters.end(),
                     [](const Heater& heater) { return heater.kind->from_below; });
}

bool slow_plants(const Build& build) {
  return std::any_of(build.plants.begin(), build.plants.end(), [](const PlantUse& plant) {
    return plant.facts.growth && plant.facts.growth->value == "slow";
  });
}

bool moved(const Build& build) {
  const Identity& id = build.identity;
  return id.moved && id.moves_on && *id.moves_on > id.plant_on;
}

const std::map<std::string, Condition>& conditions() {
  static const std::map<std::string, Condition> all{
      {"humid", [](const Build& b) { return b.kind == BuildKind::humid; }},
      {"dry", [](const Build& b) { return is_dry(b.kind); }},
      {"watered", watered_through},
      {"holds-water", [](const Build& b) { return drained(b) || b.water_area; }},
      {"drainage", drained},
      {"granules", [](const Build& b) { return b.layers.drainage.kind->poured; }},
      {"raised-floor", [](const Build& b) { return b.layers.drainage.kind->on_supports; }},
      {"outlet", has_outlet},
      {"separator", [](const Build& b) { return b.layers.separator.has_value(); }},
      {"litter", [](const Build& b) { return b.layers.litter.has_value(); }},
      {"moss", [](const Build& b) { return b.layers.moss.has_value(); }},
      {"background", [](const Build& b) { return b.enclosure.background.has_value(); }},
      {"cures", anything_cures},
      {"hardscape", [](const Build& b) { return !b.furnishings.empty() || !b.standing.empty(); }},
      {"on-base", [](const Build& b) { return stands_on(b, true); }},
      {"on-substrate", [](const Build& b) { return stands_on(b, false); }},
      {"fixed", [](const Build& b) { return any_furnishing(b, hung); }},
      {"bonded", [](const Build& b) { return any_furnishing(b, bonded); }},
      {"terraces", [](const Build& b) { return !b.layers.substrate.terraces.empty(); }},
      {"amendments", [](const Build& b) { return !b.amendments.empty(); }},
      {"water-area", [](const Build& b) { return b.water_area.has_value(); }},
      {"plants", [](const Build& b) { return !b.plants.empty(); }},
      {"slow-plants", slow_plants},
      {"mister", [](const Build& b) { return b.misting.has_value(); }},
      {"nozzles", [](const Build& b) { return b.misting && !b.misting->by_hand; }},
      {"lamps", [](const Build& b) { return !b.lamps.empty(); }},
      {"uv-lamps", has_uv_lamp},
      {"heaters", [](const Build& b) { return !b.heaters.empty(); }},
      {"heat-below", warmed_from_below},
      {"crew", [](const Build& b) { return !b.crew.empty(); }},
      {"springtails", [](const Build& b) { return crew_of(b, "springtail"); }},
      {"isopods", [](const Build& b) { return crew_of(b, "isopod"); }},
      {"animals", [](const Build& b) { return !b.kept.empty(); }},
      {"climbing-animal", [](const Build& b) { return any_animal(b, climbs); }},
      {"heavy-animal",
       [](const Build& b) {
         return any_animal(
             b, [](const KeptAnimal& a) { return known_mass(a) >= constants::heavy_animal; });
       }},
      {"digging-animal", [](const Build& b) { return any_animal(b, digs); }},
      {"moved", moved},
      {"replaced", [](const Build& b) { return !b.replaced.empty(); }},
  };
  return all;
}

// The names that one rule gives under "if" or "unless".
struct Given {
  const std::vector<std::string>& names;
  const char* key;
  const Span& where;
};

void check_names(const Given& given, Sink& sink) {
  for (const std::string& name : given.names) {
    if (conditions().contains(name)) continue;
    const auto known = task_conditions();
    const auto near = closest(name, known);
    sink.add({.where = given.where,
              .message = "unknown condition '" + name + "' in '" + given.key + "'",
              .expected = join(known, ", "),
              .hint = near ? "did you mean '" + *near + "'?" : ""});
  }
}

template <class Rule>
void check_rules(const std::vector<Rule>& rules, Sink& sink) {
  for (const Rule& rule : rules) {
    check_names({rule.when.all, "if", rule.where}, sink);
    check_names({rule.when.none, "unless", rule.where}, sink);
  }
}

}  // namespace

std::vector<std::string> task_conditions() {
  std::vector<std::string> names;
  for (const auto& [name, test] : conditions()) names.push_back(name);
  return names;
}

void check_conditions(const TaskRules& rules, Sink& sink) {
  check_rules(rules.work, sink);
  check_rules(rules.care, sink);
  check_rules(rules.readiness, sink);
  check_rules(rules.points, sink);
}

bool condition_holds(const std::string& name, const Build& build) {
  const auto found = conditions().find(name);
  return found != conditions().end() && found->second(build);
}

bool applies(const Conditions& when, const Build& build) {
  const auto holds = [&](const std::string& name) { return condition_holds(name, build); };
  return std::all_of(when.all.begin(), when.all.end(), holds) &&
         std::none_of(when.none.begin(), when.none.end(), holds);
}

}  // namespace loamsheet
