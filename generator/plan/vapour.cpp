#include "plan/vapour.h"

#include <algorithm>
#include <cmath>

#include "plan/climate_constants.h"
#include "plan/crossing.h"

namespace loamsheet {
namespace {

constexpr double kelvin = 273.15;
constexpr double pressure = 101325;      // Pa, of the standard atmosphere
constexpr double gas_vapour = 461.5;     // J/(kg K)
constexpr double gas_dry_air = 287.055;  // J/(kg K)

}  // namespace

double saturation_pressure(Celsius t) {
  return 0.6108 * std::exp(17.27 * t.v / (t.v + 237.3));
}

Celsius dew_point(Celsius t, Fraction humidity) {
  const double b = (std::log(humidity.v) + 17.27 * t.v / (237.3 + t.v)) / 17.27;
  return {237.3 * b / (1 - b)};
}

double vapour_density(Celsius t, Fraction humidity) {
  return saturation_pressure(t) * 1000 * humidity.v / (gas_vapour * (t.v + kelvin));
}

MoistAir moist_air(Celsius t, Fraction humidity) {
  const double vapour = saturation_pressure(t) * 1000 * humidity.v;
  return {(pressure - vapour) / (gas_dry_air * (t.v + kelvin)),
          gas_dry_air / gas_vapour * vapour / (pressure - vapour)};
}

double evaporation(const Surface& s) {
  const double at_water = saturation_pressure(s.water) * 1000;
  const double in_air = saturation_pressure(s.air) * 1000 * s.humidity.v;
  const MoistAir wet = moist_air(s.water, {1}), air = moist_air(s.air, s.humidity);
  const double rising = 35 * wet.density * std::cbrt(std::max(0.0, air.density - wet.density)) *
                        (wet.ratio - air.ratio);
  return std::max(rising, 0.00005 * (at_water - in_air));
}

double cooled_evaporation(Celsius air, Fraction humidity) {
  constexpr double close = 1e-4, coldest = 15;  // K; a wet bulb is never that far under dry air
  const double watts = constants::heat_of_evaporation / 3600;
  const double surface = crossing({air.v - coldest, air.v}, close, [&](double water) {
    const double comes = (air.v - water) / constants::floor_air_resistance;
    return comes - watts * evaporation({{water}, air, humidity});
  });
  return std::max(0.0, evaporation({{surface}, air, humidity}));
}

}  // namespace loamsheet
