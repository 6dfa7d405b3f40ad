// shade: what the crown of one plant leaves of the light that another gets (Beer-Lambert).
#pragma once
#include "check/build.h"
#include "plan/light/crown.h"

namespace loamsheet {

// The middle of all lamps, each weighted by its photons; nothing without light.
std::optional<Position> lamp_middle(const Build&);

// Most pairs do not: a crown that is flat or below another takes nothing from it.
inline bool may_shade(const Crown& other, const Crown& plant) {
  return other.casts && other.middle.z + other.half_height > plant.middle.z;
}

// The share of light that reaches a place from a lamp through a crown: exp(-k a s), with the leaf
// area density a of the crown, the length s of the way through it, and the extinction coefficient k
// (Monsi and Saeki 1953 for the law; its coefficients are in light/constants.h).
double light_left(const Position& place, const Crown&, const Position& lamp);

// The same to the middle of a plant's crown past that of another.
double light_left(const Crown& plant, const Crown& other, const Position& lamp);

}  // namespace loamsheet
