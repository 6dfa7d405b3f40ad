#include "plan/fixing.h"

#include <algorithm>
#include <cmath>

#include "plan/constants.h"
#include "plan/ground.h"

namespace loamsheet {
namespace {

bool background_held_by(const Build& build, const std::string& what) {
  const auto& background = build.enclosure.background;
  return background && background->fixed_by == what;
}

}  // namespace

SquareMetres background_area(const Enclosure& enclosure) {
  return {background_length(enclosure).v * enclosure.height.v / 1e6};
}

Litres sealant_needed(const Build& build, const Plan& plan) {
  double metres = 0;
  if (background_held_by(build, "silicone")) {
    metres += background_area(build.enclosure).v / constants::bead_spacing;
  }
  for (const Furnishing& thing : build.furnishings) {
    if (!thing.stands && thing.fixed_by == "silicone") metres += constants::bead_of_furnishing;
  }
  if (const auto& water = plan.water_area) {
    metres += 2 * (water->dam_length + 2 * water->dam_height).v / 1000;
  }
  return {metres * constants::bead_litres};
}

double foam_needed(const Build& build) {
  if (!background_held_by(build, "foam")) return 0;
  return std::ceil(background_area(build.enclosure).v * constants::foam_cans);
}

bool background_cures(const Build& build) {
  const auto& background = build.enclosure.background;
  if (!background) return false;
  constexpr const char* dry[] = {"magnet", "wedged", "screws"};
  return std::find(std::begin(dry), std::end(dry), background->fixed_by) == std::end(dry);
}

}  // namespace loamsheet
