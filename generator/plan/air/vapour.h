// vapour: moist air at sea level, and what a wet surface gives off into it.
#pragma once
#include "base/units.h"

namespace loamsheet {

// Over water, kPa. FAO Irrigation and Drainage Paper 56 (1998), equation 11.
double saturation_pressure(Celsius);

// The temperature at which the vapour of this air is saturated; humidity above 0. The same equation
// turned round.
Celsius dew_point(Celsius, Fraction humidity);

// Kilograms of vapour in a cubic metre: ideal gas.
double vapour_density(Celsius, Fraction humidity);

// Air and its vapour in a cubic metre, at the standard atmosphere: kilograms of dry air, and of
// vapour for one kilogram of it.
struct MoistAir {
  double density, ratio;
};
MoistAir moist_air(Celsius, Fraction humidity);

// Water given off by a still water surface, kg m-2 h-1. Shah 2014, ASHRAE Transactions 120(2).
struct Surface {
  Celsius water, air;
  Fraction humidity;
};
double evaporation(const Surface&);

// The same of a surface that cools itself: it gives off what the heat that comes to it from the air
// pays for, through the resistance of the air over a floor (ISO 6946). No light falls on it.
double cooled_evaporation(Celsius air, Fraction humidity);

}  // namespace loamsheet
