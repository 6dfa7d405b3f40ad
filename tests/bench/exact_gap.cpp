// Two hundred drawn placements of eight plants over forty sites: how the search compares with the
// exact best, and the bound with both. Numbers only.
#include <algorithm>
#include <cstdio>

#include "../exact/model.h"

using namespace loamsheet;
using namespace loamsheet::tests;

int main() {
  constexpr int cases = 200;
  int equal = 0, unproved = 0;
  double worst = 0;
  std::vector<double> gaps;
  for (int number = 1; number <= cases; ++number) {
    const Case drawn = drawn_case(static_cast<std::uint32_t>(1000 + number), 8, 40);
    const long exact = exact_score(drawn);
    const Placement found = place(drawn.plants, drawn.sites, drawn.lamp);
    gaps.push_back(100.0 * double(found.bound - found.score) / double(found.bound));
    if (exact <= 0) {
      ++unproved;
      continue;
    }
    worst = std::max(worst, 100.0 * double(exact - found.score) / double(exact));
    equal += found.score >= exact - 1 ? 1 : 0;
  }
  std::sort(gaps.begin(), gaps.end());
  std::printf("exact best reached: %d of %d (not proved by the solver: %d)\n", equal, cases,
              unproved);
  std::printf("worst below the exact best: %.3f %%\n", worst);
  std::printf("gap to the bound, median and most: %.2f %%, %.2f %%\n", gaps[gaps.size() / 2],
              gaps.back());
}
