// order: the steps of the build, by the work rules and the plants.
#pragma once
#include <vector>

#include "check/build.h"
#include "plan/care/care.h"

namespace loamsheet {

// A step comes after all that its rule names; where several may come next, by group, then in the
// order of the rules, plants in the order of plant_sequence().
std::vector<Step> plan_order(const Build&, const Planted&);

// A plant on its way into the ground: its place, as far as it is known.
struct PlantStep {
  int number = 0;
  std::string name;
  SiteKind site = SiteKind::floor;
  std::string on;  // furnishing or "background"
  Position at;
  bool placed = false;
  Millimetres height;
};

// Plants in working order: those on mounts and in pockets from the top down, so that a pocket is
// filled before what hangs below it; then the floor from the back, tall before low. A plant that
// has no place is left out; while no places are worked out, all come in the order of the spec.
std::vector<PlantStep> plant_sequence(const Build&, const Planted&);

}  // namespace loamsheet
