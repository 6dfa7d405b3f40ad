// choose: picks the plants that a spec leaves open, and says why.
#pragma once
#include <optional>
#include <string>
#include <vector>

#include "base/money.h"
#include "check/build.h"
#include "plan/place/planting.h"

namespace loamsheet {

class FieldSink;

// Why a plant was picked or passed over: a sentence is "planting.picked.NAME" or
// "planting.passed.NAME".
struct PickedPlant {
  int number = 0;
  std::string species, common_name;
  std::string role;            // backdrop, focal, middle, ground, trailer, mounted, moss
  std::optional<Money> price;  // net; nothing when no price is known
  std::vector<Reason> why;
};
void fields(const PickedPlant&, FieldSink&);

struct PassedOver {
  std::string species, common_name, role;
  Reason because;
};
void fields(const PassedOver&, FieldSink&);

struct Selection {
  int wanted = 0;
  std::optional<Money> budget, cost;  // net
  std::vector<PickedPlant> picked;
  std::vector<PassedOver> passed_over;   // by role, then by species
  std::vector<std::string> empty_roles;  // that nothing on offer could fill
  Span where;
};
void fields(const Selection&, FieldSink&);

// Puts picked plants in the place of Build::to_choose, out of Build::offered, and numbers all
// plants anew. A picked plant carries no stop against the animals, is on hand where there is a
// stock list, and has a place beside the plants that the spec names; together they keep to the
// budget. As many as were asked for are picked, while that is possible; of such sets the one worth
// most (see best_choice.h), by fit to the best of the enclosure's places, by the climate, by roles
// and by variety in leaf: Build::choosing says how much each counts.
std::vector<Selection> choose_plants(Build&);

}  // namespace loamsheet
