#include <algorithm>
#include <array>
#include <cmath>
#include <utility>

#include "plan/shop/lift.h"

namespace loamsheet {
namespace {

constexpr double load_constant = 23;  // kg; all of this file: pages 7 to 18

double horizontal_multiplier(double cm) {
  return cm > 63 ? 0 : 25 / std::max(25.0, cm);
}

double vertical_multiplier(double cm) {
  return cm > 175 ? 0 : 1 - 0.003 * std::fabs(cm - 75);
}

double distance_multiplier(double cm) {
  return cm > 175 ? 0 : 0.82 + 4.5 / std::max(25.0, cm);
}

double asymmetry_multiplier(double degrees) {
  return degrees > 135 ? 0 : 1 - 0.0032 * degrees;
}

// Table 5, the columns for at most an hour. They differ from 13 lifts a minute on, where the
// hands may not start below 75 cm.
constexpr std::array<std::pair<double, double>, 17> frequencies{{{0.2, 1.00},
                                                                 {0.5, 0.97},
                                                                 {1, 0.94},
                                                                 {2, 0.91},
                                                                 {3, 0.88},
                                                                 {4, 0.84},
                                                                 {5, 0.80},
                                                                 {6, 0.75},
                                                                 {7, 0.70},
                                                                 {8, 0.60},
                                                                 {9, 0.52},
                                                                 {10, 0.45},
                                                                 {11, 0.41},
                                                                 {12, 0.37},
                                                                 {13, 0.34},
                                                                 {14, 0.31},
                                                                 {15, 0.28}}};

double frequency_multiplier(double per_minute, double vertical) {
  if (per_minute > (vertical < 75 ? 12 : 15)) return 0;
  const auto above = std::find_if(frequencies.begin(), frequencies.end(),
                                  [&](const auto& row) { return row.first >= per_minute; });
  if (above == frequencies.begin()) return above->second;
  const auto below = above - 1;
  const double share = (per_minute - below->first) / (above->first - below->first);
  return below->second + (above->second - below->second) * share;
}

// A fair hold counts as a good one when the hands are at 75 cm or above.
double coupling_multiplier(double coupling, double vertical) {
  return coupling == 0.95 && vertical >= 75 ? 1 : coupling;
}

}  // namespace

LiftMultipliers multipliers(const LiftTask& task) {
  return {horizontal_multiplier(task.horizontal),
          vertical_multiplier(task.vertical),
          distance_multiplier(task.travel),
          asymmetry_multiplier(task.twist),
          frequency_multiplier(task.per_minute, task.vertical),
          coupling_multiplier(task.coupling, task.vertical)};
}

Kilograms weight_limit(const LiftTask& task) {
  const LiftMultipliers m = multipliers(task);
  return {load_constant * m.horizontal * m.vertical * m.distance * m.asymmetry * m.frequency *
          m.coupling};
}

}  // namespace loamsheet
