// air: heat, vapour and water day by day in the enclosure. Pure functions of a build.
#pragma once
#include <array>
#include <optional>
#include <string>
#include <vector>

#include "base/finding.h"
#include "base/money.h"
#include "base/units.h"
#include "check/build.h"
#include "plan/air/constants.h"
#include "plan/air/readings.h"
#include "plan/air/water_days.h"
#include "plan/light/light.h"

namespace loamsheet {

class FieldSink;

// Air of the enclosure at one end of the year, by day or by night, at mid height.
struct AirState {
  Range<Celsius> temperature;
  Range<Fraction> humidity;
  Range<double> vent;         // litres a second exchanged with the room
  Range<Litres> lost;         // water that leaves as vapour, litres an hour
  Range<Litres> condensed{};  // water that runs down the panes, litres an hour
};
void fields(const AirState&, FieldSink&);
struct Season {
  AirState day, night;
};
void fields(const Season&, FieldSink&);
struct AirPlan {
  Season winter, summer;
};
void fields(const AirPlan&, FieldSink&);
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
void fields(const HeatPlan&, FieldSink&);
HeatPlan heat_plan(const Build&);

// What is known once the air is balanced and the water followed day by day.
struct Climate : Lighting {
  std::optional<AirPlan> air;
  std::optional<HeatPlan> heat;
  std::vector<FirstReading> readings;  // to take first, the most telling first
  std::optional<UpkeepPlan> upkeep;
};

// The water that is misted, and what the mister may do; heat and humidity against what lives in
// the tank; heaters.
Found water_findings(const Build&, const Climate&);
Found climate_findings(const Build&, const Climate&);

// Temperature by day at a height above the floor, at one end of the year whose room is so warm: the
// top is warmer than the middle by a share of what the tank is warmer than the room, the floor as
// much cooler (constants::warm_top).
Range<Celsius> temperature_at(const Build&, const AirState& day, Celsius room, Millimetres height);

// The worst that is met outside a band, one way and the other; nothing where the band is kept.
struct OutsideBand {
  std::optional<Celsius> coldest, warmest;
  std::optional<Fraction> driest, dampest;
  bool fits() const { return !coldest && !warmest && !driest && !dampest; }
};

struct ClimateFit {
  std::string name;
  std::array<OutsideBand, 4> at;  // winter day and night, summer day and night
};

// Animals first, then each kind of plant and of the crew, in the order of the spec. What is not
// known of a species is not held against the air.
std::vector<ClimateFit> climate_fit(const Build&, const AirPlan&);

}  // namespace loamsheet
