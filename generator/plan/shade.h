// shade: what the crown of one plant leaves of the light that another gets (Beer-Lambert).
#pragma once
#include "plan/crown.h"
#include "plan/placement_needs.h"
#include "plan/sites.h"

namespace loamsheet {

// The crown that a plant has where it stands.
Crown crown_of(const Needs&, const Site&);

// The middle of all lamps, each weighted by its photons; nothing without light.
std::optional<Position> lamp_middle(const Build&);

// Most pairs do not: a crown that is flat or below another takes nothing from it.
inline bool may_shade(const Crown& other, const Crown& plant) {
  return other.casts && other.middle.z + other.half_height > plant.middle.z;
}

// The share of light that reaches a place from a lamp through a crown: exp(-k a s), with the leaf
// area density a of the crown, the length s of the way through it, and the extinction coefficient k
// (Monsi and Saeki 1953 for the law; its coefficients are in placement_constants.h).
double light_left(const Position& place, const Crown&, const Position& lamp);

// The same to the middle of a plant's crown past that of another.
double light_left(const Crown& plant, const Crown& other, const Position& lamp);

}  // namespace loamsheet
