// placement: which plant stands where. A deterministic search: each plant takes its best free
// place, those with the fewest places first; then single moves, moves that make a neighbour give
// way, and swaps, as long as the sum of scores grows.
#pragma once
#include <optional>
#include <string>
#include <vector>

#include "plan/placement_needs.h"
#include "plan/sites.h"

namespace loamsheet {

struct ToPlace {
  Needs needs;
  std::string on;            // only there; empty: anywhere
  std::optional<int> fixed;  // the site that it keeps, whatever the rules say
};

struct Choice {
  int site = -1;
  long score = 0;  // millionths
};

struct Placement {
  std::vector<std::optional<Choice>> chosen;  // by plant; none: no site obeys every hard rule
  std::vector<std::optional<Choice>> next;    // the best other free place more than a spread away
  long score = 0, bound = 0;                  // sums; no placement scores more than the bound
};

Placement place(const std::vector<ToPlace>&, const std::vector<Site>&);

}  // namespace loamsheet
