// choosing: what makes a planting that the plan picks a good one (templates/choosing.yaml).
// (templates/choosing.yaml).
#pragma once
#include <map>
#include <string>
#include <vector>

#include "base/diagnostic.h"
#include "base/world.h"

namespace loamsheet {

// A part that plants play in a planting, and what it is worth to have it played.
struct RoleRule {
  std::vector<std::string> habits;   // that play it when the catalogue does not say otherwise
  double filled = 1, crowded = 0.3;  // for the first plant; off for each beyond enough
  double share = 0.2;                // of all that are picked: enough
};

struct ChoosingRules {
  std::map<std::string, RoleRule> roles;
  double place = 0.5, climate = 0.5;  // shares of what a plant is worth
  double same_leaf = 0.1;             // off for a second species of one kind of leaf in a role
  double caution = 3;                 // off for a plant with a caution
  double least_fit = 0.5;             // below this a rule of placement speaks against a plant
};

// Reads templates/choosing.yaml.
ChoosingRules read_choosing(World&, Sink&);

}  // namespace loamsheet
