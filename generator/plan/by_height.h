// by_height: the air from the floor to the top of the tank.
#pragma once
#include "plan/climate.h"

namespace loamsheet {

// Temperature by day at a height above the floor, at one end of the year whose room is so warm: the
// top is warmer than the middle by a share of what the tank is warmer than the room, the floor as
// much cooler (constants::warm_top).
Range<Celsius> temperature_at(const Build&, const AirState& day, Celsius room, Millimetres height);

}  // namespace loamsheet
