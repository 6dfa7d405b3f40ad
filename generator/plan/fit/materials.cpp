#include "plan/fit/fit.h"
#include "plan/fit/grounds.h"

namespace loamsheet {
namespace {

// What lies under the separator touches nobody.
bool covered(const Build& build, const HazardousMaterial& material, const HazardRule& rule) {
  return rule.by_touch && material.use == "drainage" && build.layers.separator;
}

// By its mouth or by its skin, whichever weighs more.
std::optional<Weight> weight_for(const KeptAnimal& animal, const HazardRule& rule,
                                 Origins origins) {
  const auto& browses = animal.facts.browses;
  const auto& skin = animal.facts.body.skin_takes_up;
  const auto column = rule.eaten.find(browses ? browses->value : "no");
  auto weight = weight_of(column == rule.eaten.end() ? Gravity::none : column->second, origins);
  if (!holds(skin)) return weight;
  origins.push_back(skin->origin);
  const auto by_skin = weight_of(rule.skin, origins);
  return by_skin && (!weight || *by_skin < *weight) ? by_skin : weight;
}

// Of the animal that it weighs most for.
Found harmful(const Build& build, const HazardousMaterial& material) {
  const auto row = build.hazards.find(material.hazard.kind);
  Found found;
  if (row == build.hazards.end() || covered(build, material, row->second)) return found;
  const Origins origins{row->second.origin, material.hazard.origin};
  for (const KeptAnimal& animal : build.kept) {
    const auto weight = weight_for(animal, row->second, origins);
    if (!weight || (!found.empty() && found[0].weight <= *weight)) continue;
    found = {{*weight,
              "material-" + material.hazard.kind,
              material.where,
              {{"material", material.material},
               {"animal", animal.facts.name},
               {"source", sources_of(build, origins)}}}};
  }
  return found;
}

}  // namespace

Found material_fit(const Build& build) {
  Found all;
  for (const HazardousMaterial& material : build.hazardous) append(all, harmful(build, material));
  return all;
}

}  // namespace loamsheet
