// dosing: amendments by their label, and clean-up crew by the floor.
#pragma once
#include <optional>
#include <string>
#include <vector>

#include "base/units.h"

namespace loamsheet {

class FieldSink;
struct Build;
struct LayersPlan;

struct DosePlan {
  std::string material;
  Kilograms dose;
  std::optional<double> teaspoons;      // level ones of 5 mL; nothing without a density
  std::optional<double> nitrogen_mg_l;  // given to a litre of the substrate
};
void fields(const DosePlan&, FieldSink&);

// label rate x strength x the substrate's volume in place, or the area of its floor.
// mg N per litre = g per litre x per cent of N x 10: Texas A&M, nutrient calculations.
std::vector<DosePlan> plan_doses(const Build&, const LayersPlan&);

struct CrewPlan {
  std::string species;
  double given = 0;
  std::optional<int> suggested;  // whole cultures; nothing where the catalogue has no density
};
void fields(const CrewPlan&, FieldSink&);

// suggested = the floor's area x the least animals on a square metre / animals of one culture,
// rounded up.
std::vector<CrewPlan> plan_crew(const Build&);

}  // namespace loamsheet
