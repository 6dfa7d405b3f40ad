// constants: who lifts what, each with its origin.
#pragma once
#include "base/units.h"

namespace loamsheet::constants {

// The height of a stand that the spec does not state. Common practice.
inline constexpr Millimetres usual_stand{750};

// What one person lifts alone at most, near the waist and close to the body: the smaller of the
// two peak values of HSE INDG143, "Manual handling at work".
inline constexpr Kilograms alone_at_most{16};

// How wide a sack is, seen by who lifts it, in centimetres. Common practice.
inline constexpr double sack_width{40};

}  // namespace loamsheet::constants
