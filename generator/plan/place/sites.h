// sites: the places that an enclosure offers to plants, with what each is like.
#pragma once
#include <string>
#include <vector>

#include "base/units.h"
#include "check/build.h"
#include "plan/air/air.h"
#include "plan/fill/quantities.h"
#include "plan/place/planting.h"

namespace loamsheet {

class LightField;

struct Site {
  SiteKind kind = SiteKind::floor;
  Position at;
  std::string on;               // furnishing or "background" of a pocket or mount
  Millimetres root;             // depth of substrate; none at a mount
  Millimetres headroom;         // free height above
  Millimetres drop;             // free height below, down to the ground
  Millimetres wall;             // to the nearest edge of the ground; of the floor only
  Millimetres support;          // to the nearest of back and side walls
  double across = 0, back = 0;  // place in the box: 0 left, 1 right; 0 front, 1 back
  double up = 0;                // 0 at the ground, 1 at the top
  bool before_basking = false;  // between the front and a basking place
  LightAt light;
  Range<Fraction> humidity;
};

// A grid over the ground, what ledges' pockets hold, and points along branches and over the
// background; without light and humidity. Nothing where a furnishing stands or its way in or a
// door's swing must stay free.
std::vector<Site> bare_sites(const Build&, const LayersPlan&);

// The place that a plant is pinned to: on the ground, or the point nearest to it of what it is to
// grow on.
Site pinned_site(const Build&, const LayersPlan&, const PlantUse&);

// Whether the ground at a place must stay free: a thing stands there, its mouth opens there, or a
// door swings there.
bool kept_free(const Build&, Point);

// What the sites' light and humidity come from.
struct SiteClimate {
  const AirPlan& air;
  const LightField& light;
};
void light_up(std::vector<Site>&, const Build&, const SiteClimate&);

}  // namespace loamsheet
