#include "plan/air/vapour.h"

#include <algorithm>
#include <cmath>

#include "base/crossing.h"
#include "plan/air/constants.h"

namespace loamsheet {
namespace {

constexpr double kelvin = 273.15;
constexpr double pressure = 101325;      // Pa, of the standard atmosphere
constexpr double gas_vapour = 461.5;     // J/(kg K)
constexpr double gas_dry_air = 287.055;  // J/(kg K)

// Air that holds vapour of this pressure, Pa.
MoistAir holding(Celsius t, double vapour) {
  return {(pressure - vapour) / (gas_dry_air * (t.v + kelvin)),
          gas_dry_air / gas_vapour * vapour / (pressure - vapour)};
}

}  // namespace

double saturation_pressure(Celsius t) {
  return 0.6108 * std::exp(17.27 * t.v / (t.v + 237.3));
}

double vapour_density(Celsius t, Fraction humidity) {
  return saturation_pressure(t) * 1000 * humidity.v / (gas_vapour * (t.v + kelvin));
}

AirOver::AirOver(Celsius air, Fraction humidity)
    : vapour_(saturation_pressure(air) * 1000 * humidity.v), air_(holding(air, vapour_)) {}

double AirOver::takes_from(Celsius water) const {
  const double at_water = saturation_pressure(water) * 1000;
  const MoistAir wet = holding(water, at_water);
  const double rising = 35 * wet.density * std::cbrt(std::max(0.0, air_.density - wet.density)) *
                        (wet.ratio - air_.ratio);
  return std::max(rising, 0.00005 * (at_water - vapour_));
}

double cooled_evaporation(Celsius air, Fraction humidity) {
  constexpr double close = 1e-4, coldest = 15;  // K; a wet bulb is never that far under dry air
  const double watts = constants::heat_of_evaporation / 3600;
  const AirOver over(air, humidity);
  const double surface = crossing({air.v - coldest, air.v}, close, [&](double water) {
    return (air.v - water) / constants::floor_air_resistance - watts * over.takes_from({water});
  });
  return std::max(0.0, over.takes_from({surface}));
}

}  // namespace loamsheet
