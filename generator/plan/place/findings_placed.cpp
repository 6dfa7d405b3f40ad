#include "plan/place/place.h"

namespace loamsheet {
namespace {

Finding about(const PlacedPlant& plant, const Span& where, const std::string& rule) {
  return {Weight::caution,
          rule,
          where,
          {{"plant", plant.common_name}, {"number", plant.number}, {"spread", plant.spread}}};
}

// Roots find too little substrate where the plant stands, or anywhere.
Finding shallow(const PlacedPlant& plant, const PlantUse& use, const std::string& rule) {
  Finding finding = about(plant, use.where, rule);
  finding.args.emplace_back("wanted", plant.root_wanted);
  finding.args.emplace_back("there", plant.root_there);
  return finding;
}

Found places(const Build& build, const PlantingPlan& planting) {
  Found all;
  for (size_t i = 0; i < planting.plants.size(); ++i) {
    const PlacedPlant& plant = planting.plants[i];
    const Span& where = build.plants[i].where;
    const bool deep = plant.root_there >= plant.root_wanted;
    if (!plant.placed && !deep) {
      all.push_back(shallow(plant, build.plants[i], "substrate-shallow-for-roots"));
    } else if (!plant.placed) {
      all.push_back(about(plant, where, "plant-unplaced"));
    }
    for (const std::string& rule : plant.broken) {
      all.push_back(rule == "roots" ? shallow(plant, build.plants[i], "pin-roots")
                                    : about(plant, where, "pin-" + rule));
    }
  }
  return all;
}

}  // namespace

Found placed_findings(const Build& build, const Planted& plan) {
  return plan.planting ? places(build, *plan.planting) : Found{};
}

}  // namespace loamsheet
