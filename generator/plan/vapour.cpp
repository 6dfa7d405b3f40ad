#include "plan/vapour.h"

#include <algorithm>
#include <cmath>

namespace loamsheet {
namespace {

constexpr double kelvin = 273.15;
constexpr double pressure = 101325;      // Pa, of the standard atmosphere
constexpr double gas_vapour = 461.5;     // J/(kg K)
constexpr double gas_dry_air = 287.055;  // J/(kg K)

// Air with this vapour pressure: kilograms of dry air in a cubic metre, and of vapour for one.
struct Moist {
  double density, ratio;
};

Moist moist(Celsius t, double vapour) {
  return {(pressure - vapour) / (gas_dry_air * (t.v + kelvin)),
          gas_dry_air / gas_vapour * vapour / (pressure - vapour)};
}

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

double evaporation(const Surface& s) {
  const double at_water = saturation_pressure(s.water) * 1000;
  const double in_air = saturation_pressure(s.air) * 1000 * s.humidity.v;
  const Moist wet = moist(s.water, at_water), air = moist(s.air, in_air);
  const double rising = 35 * wet.density * std::cbrt(std::max(0.0, air.density - wet.density)) *
                        (wet.ratio - air.ratio);
  return std::max(rising, 0.00005 * (at_water - in_air));
}

}  // namespace loamsheet
