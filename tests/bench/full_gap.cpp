// A hundred drawn builds planned whole: how far the placement's score may lie below the best, by
// its own bound. `full_gap FOLDER` writes the first ten specs there, to be made and looked at.
#include <algorithm>
#include <cstdio>
#include <fstream>

#include "../cases/overlay.h"
#include "catalogue/catalogue.h"
#include "catalogue/living.h"
#include "drawn_spec.h"
#include "job/job.h"

using namespace loamsheet;

namespace {

// Plants of the damp places that these builds have.
std::vector<std::string> damp_plants(const Catalogue& catalogue) {
  std::vector<std::string> ids;
  for (const std::string& id : catalogue.plants.ids()) {
    const auto plant = read_plant(catalogue, id).value;
    if (plant && plant->humidity && plant->humidity->value.v >= 0.5) ids.push_back(id);
  }
  return ids;
}

// In per cent of the bound; below nothing where the spec makes no plan.
double gap_of(const std::string& spec) {
  Overlay world("drawn.yaml", spec);
  const auto planned = plan_spec(world, "drawn.yaml", "");
  if (!planned || !planned.value->plan.planting) return -1;
  const auto& planting = *planned.value->plan.planting;
  return 100 * (planting.bound - planting.score) / planting.bound;
}

}  // namespace

int main(int count, char** words) {
  constexpr unsigned builds = 100, shown = 10;
  const auto world = real_world();
  const auto catalogue = read_catalogue(*world);
  if (!catalogue) return 1;
  const auto species = damp_plants(*catalogue.value);
  std::vector<double> gaps;
  for (unsigned number = 1; number <= builds; ++number) {
    const std::string spec = tests::drawn_spec(number, species);
    if (count > 1 && number <= shown) {
      std::ofstream(std::string(words[1]) + "/drawn-" + std::to_string(number) + ".yaml") << spec;
    }
    const double gap = gap_of(spec);
    if (gap >= 0) gaps.push_back(gap);
  }
  std::sort(gaps.begin(), gaps.end());
  std::printf("%zu of %u drawn builds planned; gap to the bound, median and most: ", gaps.size(),
              builds);
  if (!gaps.empty()) std::printf("%.2f %%, %.2f %%", gaps[gaps.size() / 2], gaps.back());
  std::printf("\n");
}
