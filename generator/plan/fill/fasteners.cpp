#include "plan/fill/fasteners.h"

#include <algorithm>
#include <cmath>

#include "plan/fill/constants.h"
#include "plan/fill/ground.h"

namespace loamsheet {
namespace {

bool background_held_by(const Build& build, const std::string& what) {
  const auto& background = build.enclosure.background;
  return background && background->fixed_by == what;
}

// How many furnishings are held by it.
int held_by(const Build& build, const std::string& what) {
  const auto& things = build.furnishings;
  return static_cast<int>(std::count_if(things.begin(), things.end(), [&](const Furnishing& f) {
    return !f.stands && f.fixed_by == what;
  }));
}

}  // namespace

SquareMetres background_area(const Enclosure& enclosure) {
  return {background_length(enclosure).v * enclosure.height.v / 1e6};
}

Litres sealant_needed(const Build& build, const std::optional<WaterAreaPlan>& water) {
  double metres = 0;
  if (background_held_by(build, "silicone")) {
    metres += background_area(build.enclosure).v / constants::bead_spacing;
  }
  metres += held_by(build, "silicone") * constants::bead_of_furnishing;
  if (water) {
    metres += 2 * (water->dam_length + 2 * water->dam_height).v / 1000;
  }
  return {metres * constants::bead_litres};
}

double foam_needed(const Build& build) {
  double cans = held_by(build, "foam") * constants::foam_of_furnishing;
  if (background_held_by(build, "foam")) {
    cans += background_area(build.enclosure).v * constants::foam_cans;
  }
  return std::ceil(cans);
}

int pieces_needed(const Build& build, const std::string& fixed_by) {
  const bool screws = fixed_by == "screws";
  const int each = screws ? constants::screws_of_furnishing : constants::magnets_of_furnishing;
  const int back = background_held_by(build, fixed_by) ? constants::pieces_of_background : 0;
  return held_by(build, fixed_by) * each + back;
}

bool background_cures(const Build& build) {
  const auto& background = build.enclosure.background;
  if (!background) return false;
  constexpr const char* dry[] = {"magnet", "wedged", "screws"};
  return std::find(std::begin(dry), std::end(dry), background->fixed_by) == std::end(dry);
}

bool is_held_up(const Furnishing& thing) {
  const bool place = thing.kind == "basking-spot" && !thing.mass && thing.fixed_by.empty();
  return !thing.stands && !place;
}

bool bonded(const Furnishing& thing) {
  return !thing.stands && (thing.fixed_by == "silicone" || thing.fixed_by == "foam");
}

bool anything_cures(const Build& build) {
  const auto& things = build.furnishings;
  return background_cures(build) || build.water_area ||
         std::any_of(things.begin(), things.end(), bonded);
}

}  // namespace loamsheet
