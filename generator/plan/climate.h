// climate: light, air and heat in the enclosure. Pure functions of a build.
#pragma once
#include <optional>
#include <vector>

#include "base/money.h"
#include "base/units.h"
#include "check/build.h"

namespace loamsheet {

// Photon flux density in umol m-2 s-1 on a level surface, and the daily light integral in
// mol m-2 d-1, each lamp over its own hours.
struct LightAt {
  double ppfd = 0, dli = 0;
};
LightAt light_at(const Build&, const Position&);

// The UV index at a place, from the lamps' own open-air tables and what lies between; nothing
// when no UV lamp has a table.
std::optional<double> uv_index_at(const Build&, const Position&);

// The UV that an animal meets: at its back where it basks, and from the least to the most along the
// enclosure; against the means of its Ferguson zone, or of both where lists disagree, and the most
// that animals of the lower one were met in.
struct UvPlan {
  size_t animal = 0;  // of Build::kept
  Range<int> zone;
  Position back;
  double basking = 0, most = 0;
  Range<double> gradient, mean;
};
std::vector<UvPlan> uv_plans(const Build&);  // of animals whose zone is known, under a UV lamp

// Air of the enclosure at one end of the year, by day or by night, at mid height.
struct AirState {
  Range<Celsius> temperature;
  Range<Fraction> humidity;
  Range<double> vent;         // litres a second exchanged with the room
  Range<Litres> lost;         // water that leaves as vapour, litres an hour
  Range<Litres> condensed{};  // water that runs down the panes, litres an hour
};
struct Season {
  AirState day, night;
};
struct AirPlan {
  Season winter, summer;
};
AirPlan air_plan(const Build&);

// Whether the air depends on the unknown with this position in Build::unknowns.
bool air_depends_on(const Build&, int unknown);

// Humidity by day at a height above the floor: the top is warmer under lamps and so drier.
Range<Fraction> humidity_at(const Build&, const AirPlan&, Millimetres height);

struct HeatPlan {
  // Watts in winter to hold the middle of the animals' day band and the low end of their night's;
  // nothing without a band that all of them share.
  std::optional<double> needed_day, needed_night;
  double fitted = 0;                // watts of lamps and heaters
  double kwh_month = 0;             // running, over 30 days of winter
  std::optional<Money> cost_month;  // of those, at the tariff, to the coin
  Range<Celsius> all_off;           // on a winter day with no power
  Range<Celsius> all_on;            // on a summer day with lamps lit and every heater stuck on
};
HeatPlan heat_plan(const Build&);

}  // namespace loamsheet
