// lamp_path: what of a lamp's rays comes through the top of the tank.
#pragma once
#include "check/build.h"

namespace loamsheet {

// The share of visible light, 0 to 1, on the way from a lamp's place down to a place in the tank:
// all from inside the tank; through an opening of the top the open share of its mesh; elsewhere
// what the cover lets through, which is of the walls' material.
double light_let_through(const Enclosure&, const Position& from, const Position& to);

// The same for ultraviolet: no cover lets any through.
double uv_let_through(const Enclosure&, const Position& from, const Position& to);

}  // namespace loamsheet
