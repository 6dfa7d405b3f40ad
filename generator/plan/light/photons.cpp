#include "plan/light/photons.h"

#include <cmath>
#include <numbers>

namespace loamsheet {

double line_factor(double along, double across, double down) {
  const double square = across * across + down * down, distance = std::sqrt(square);
  return down * down *
         (along / (2 * square * (along * along + square)) +
          std::atan(along / distance) / (2 * square * distance));
}

double corner_factor(double a, double b, double c) {
  const double u = a / c, v = b / c;
  const double p = std::sqrt(1 + u * u), q = std::sqrt(1 + v * v);
  return (u / p * std::atan(v / p) + v / q * std::atan(u / q)) / (2 * std::numbers::pi);
}

double beam_exponent(double full_angle) {
  return std::log(0.5) / std::log(std::cos(full_angle / 2 * std::numbers::pi / 180));
}

}  // namespace loamsheet
