// vents: how much air the openings of a tank exchange with the room.
#pragma once
#include <vector>

#include "base/units.h"
#include "check/enclosure.h"

namespace loamsheet {

struct Vent {
  double middle = 0;  // metres above the floor
  double tall = 0;    // metres from its lower to its upper edge; 0 when it is level
  double area = 0;    // free, m2
};

// A door breathes along its height; another side opening is a slot as wide as its wall.
std::vector<Vent> vents(const Enclosure&);

// Cubic metres a second when the air inside is `warmer` kelvins warmer than the room: the greater
// of what the stack between the lower and the upper openings draws, Q = Cd A sqrt(2 g h dT/T) with
// 1/A2 = 1/A12 + 1/A22, and of what each opening exchanges alone: at a side
// (Cd/3) A sqrt(g h dT/T), level 0.055 A^(5/4) sqrt(g dT/T). Under half a kelvin counts as that.
double vent_flow(const std::vector<Vent>&, double warmer, Celsius room);

}  // namespace loamsheet
