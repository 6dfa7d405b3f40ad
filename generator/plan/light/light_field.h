// light_field: the light of all lamps at any place of the tank.
#pragma once
#include <vector>

#include "plan/light/lamp_path.h"
#include "plan/light/obstacles.h"
#include "plan/light/shade.h"

namespace loamsheet {

// Photon flux density in umol m-2 s-1 on a level surface, and the daily light integral in
// mol m-2 d-1, each lamp over its own hours.
struct LightAt {
  double ppfd = 0, dli = 0;
};

// Bars are Lambertian lines, panels Lambertian rectangles, spots fall off as a power of the cosine.
// A ray loses what the top takes where it passes, all but what is scattered in a furnishing, and by
// Beer and Lambert in the crowns of plants. What a place lies in or on casts no shade on it.
class LightField {
 public:
  explicit LightField(const Build&);

  // On a level surface, past these crowns.
  LightAt at(const Position&, const std::vector<Crown>& crowns = {}) const;

  // The same tank under other lamps.
  LightField under(std::vector<Lamp> lamps) const;
  const std::vector<Lamp>& lamps() const { return lamps_; }

 private:
  LampPath path_;
  std::vector<Solid> solids_;
  std::vector<Lamp> lamps_;
};

}  // namespace loamsheet
