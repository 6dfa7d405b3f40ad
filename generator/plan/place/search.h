// placement: which plant stands where. A deterministic search: each plant takes its best free
// place, those with the fewest places first; then single moves, moves that make a neighbour give
// way, and swaps, as long as the sum of scores grows; then a few plants at a time are placed anew
// in every way that could be better.
#pragma once
#include <optional>
#include <string>
#include <vector>

#include "plan/place/needs.h"
#include "plan/place/sites.h"

namespace loamsheet {

struct ToPlace {
  Needs needs;
  std::string on;            // only there; empty: anywhere
  std::optional<int> fixed;  // the site that it keeps, whatever the rules say
};

struct Choice {
  int site = -1;
  long score = 0;           // millionths: by the soft rules, less what shade costs the plant
  double light_left = 1.0;  // the share that its neighbours leave
};

// What a plant scores is what the soft rules give its place, less, for each other plant, what that
// one's shade alone would cost it. So the sum is one of pairs, and can be solved exactly.
struct Placement {
  std::vector<std::optional<Choice>> chosen;  // by plant; none: no site obeys every hard rule
  std::vector<std::optional<Choice>> next;    // the best other free place more than a spread away
  long score = 0, bound = 0;                  // sums; no placement scores more than the bound
};

// Without a lamp there is no shade.
Placement place(const std::vector<ToPlace>&, const std::vector<Site>&,
                const std::optional<Position>& lamp = std::nullopt);

}  // namespace loamsheet
