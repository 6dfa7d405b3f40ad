// middle: what is taken where one value must stand for a range.
#pragma once
#include "base/units.h"

namespace loamsheet {

template <class U>
double middle(const Range<Amount<U>>& range) {
  return (range.low.v + range.high.v) / 2;
}

}  // namespace loamsheet
