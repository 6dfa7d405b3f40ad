// crossing: where a falling function crosses zero.
#pragma once
#include <cmath>
#include <utility>

#include "base/units.h"

namespace loamsheet {

// Between two ends, to within `close`; the end itself when the function does not cross between
// them. The Illinois form of false position: never outside the ends, and faster than halving.
template <class F>
double crossing(Range<double> ends, double close, F falling) {
  constexpr int most_steps = 60;
  double f_low = falling(ends.low), f_high = falling(ends.high);
  if (f_low <= 0) return ends.low;
  if (f_high >= 0) return ends.high;
  double last = ends.low;
  int side = 0;
  for (int i = 0; i < most_steps; ++i) {
    const double at = (ends.low * f_high - ends.high * f_low) / (f_high - f_low);
    const double f = falling(at);
    if (f == 0 || std::fabs(at - last) < close) return at;
    last = at;
    if (f > 0) {
      ends.low = at, f_low = f;
      if (std::exchange(side, 1) == 1) f_high /= 2;
    } else {
      ends.high = at, f_high = f;
      if (std::exchange(side, -1) == -1) f_low /= 2;
    }
  }
  return last;
}

}  // namespace loamsheet
