// choose_candidates: which of the plants on offer could be picked, in which role and at what price.
#pragma once
#include <string>
#include <vector>

#include "check/build.h"
#include "plan/choose/best_choice.h"
#include "plan/choose/choose.h"
#include "plan/place/search.h"

namespace loamsheet {

// The roles of a good planting, and last that of plants with a caution, which only make up the
// number.
inline constexpr int reserve_role = 7;

const std::vector<std::string>& role_names();

// What a role is worth among so many plants.
std::vector<RoleWorth> role_worths(const ChoosingRules&, int count);

struct Candidate {
  const PlantKind* kind = nullptr;
  Needs needs;
  std::string role;
  double fit = 0;       // of its best place
  double at_home = 0;   // in the climate of the animals
  bool priced = false;  // its prices are known
  std::string caution;  // the rule that warns of it; may be empty
  Pickable offer;
};

struct Candidates {
  std::vector<Candidate> some;          // by role, leaf and species
  std::vector<PassedOver> passed_over;  // by species
};

// Sites are those that the enclosure offers, lit.
Candidates candidates(const Build&, const std::vector<Site>&, const ToChoose&);

}  // namespace loamsheet
