// model: placements of drawn plants on drawn sites, and the exact best of them as a mixed-integer
// model, solved by GLPK. It knows nothing of how the program searches; of the scores it takes what
// one plant gets at one site, and what two plants at two sites cost each other.
#pragma once
#include <cstdint>

#include "plan/place/task.h"

namespace loamsheet::tests {

struct Case {
  std::vector<ToPlace> plants;
  std::vector<Site> sites;
  Position lamp{450, 225, 650};
};

// The case of this number: so many plants, some of them alike, and sites of every kind.
Case drawn_case(std::uint32_t number, int plants, int sites);

// The greatest score that a placement can have, in millionths; below zero when GLPK did not prove
// it.
long exact_score(const Case&);

}  // namespace loamsheet::tests
