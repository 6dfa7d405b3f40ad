// vapour: moist air at sea level, and what a wet surface gives off into it.
#pragma once
#include "base/units.h"

namespace loamsheet {

// Over water, kPa. FAO Irrigation and Drainage Paper 56 (1998), equation 11.
double saturation_pressure(Celsius);

// Kilograms of vapour in a cubic metre: ideal gas.
double vapour_density(Celsius, Fraction humidity);

// Air and its vapour in a cubic metre, at the standard atmosphere: kilograms of dry air, and of
// vapour for one kilogram of it.
struct MoistAir {
  double density, ratio;
};

// Air over a still water surface, and what it takes from it, kg m-2 h-1. Shah 2014, ASHRAE
// Transactions 120(2). What the air is is worked out once, for water of any temperature.
class AirOver {
 public:
  AirOver(Celsius air, Fraction humidity);
  double takes_from(Celsius water) const;

 private:
  double vapour_;  // Pa
  MoistAir air_;
};

// What it takes from a surface that cools itself, which gives off what the heat that comes to it
// from the air pays for, through the resistance of the air over a floor (ISO 6946). No light falls
// on it.
double cooled_evaporation(Celsius air, Fraction humidity);

}  // namespace loamsheet
