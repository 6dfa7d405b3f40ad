// choosing: what makes a planting that the plan picks a good one (templates/choosing.yaml).
#pragma once
#include <map>
#include <optional>
#include <string>
#include <vector>

#include "base/diagnostic.h"
#include "base/world.h"
#include "catalogue/file.h"

namespace loamsheet {

// A part that plants play in a planting, and what it is worth to have it played.
struct RoleRule {
  std::vector<std::string> habits;   // that play it when the catalogue does not say otherwise
  double filled = 1, crowded = 0.3;  // for the first plant; off for each beyond enough
  double share = 0.2;                // of all that are picked: enough
};

// When a plant is at home in the climate that animals are kept in.
struct ClimateRules {
  double warmth_to_spare = 3;  // K to its limit, from which on warmth does not tell
  double no_winter = 15;       // K of the coldest night above its limit
  double never_winter = 30;    // K from which on it is at home by half
  double over_least = 0.15;    // of its own air over the least that it bears
  double strange_air = 0.4;    // so far from its own air is no home
  // By the ground that a build gives (dry, between, damp) and the one that a plant wants: 0 to 1.
  std::map<std::string, std::map<std::string, double>> ground;
};

struct ChoosingRules {
  std::map<std::string, RoleRule> roles;
  ClimateRules climate;
  double place = 0.5, home = 0.5, sturdy = 0;  // shares of what a plant is worth
  double same_leaf = 0.1;  // off for a second species of one kind of leaf in a role
  double caution = 3;      // off for a plant with a caution
  double least_fit = 0.5;  // below this a rule of placement speaks against a plant
};

// The bytes of templates/choosing.yaml, which few builds want, and what they say.
YamlFilePtr choosing_file(World&, Sink&);
Outcome<ChoosingRules> choosing_in(const YamlFile&);

}  // namespace loamsheet
