// balance: heat and vapour of a tank in steady state, between its lamps, heaters and wet floor on
// one side and its walls and openings on the other.
#pragma once
#include <optional>
#include <vector>

#include "check/build.h"
#include "plan/vents.h"

namespace loamsheet {

// What of a build the balance needs.
struct Shell {
  std::vector<Vent> openings;
  double walls = 0;  // W/K that the walls and the closed top lose
  double wet = 0;    // m2 that evaporate as free water does
  int plants = 0;
  double lamps = 0;                          // W of the lamps that warm the tank
  double always = 0;                         // W of heaters that no thermostat holds
  double held = 0;                           // W of heaters that a thermostat holds
  std::optional<Range<Celsius>> day, night;  // what every animal is kept at
};
Shell tank_of(const Build&);

// One case of what is around the tank and of what is not known well.
struct Around {
  Celsius room;
  Fraction room_humidity;
  double vents = 1, evaporation = 1;  // times what was worked out
  double leaves = 0;                  // kg a day that one plant gives off in an office
};

struct Balance {
  Celsius temperature;
  Fraction humidity;
  double flow = 0;  // m3/s
  double lost = 0;  // kg of vapour an hour
};

// The state when the tank is as warm as given: vapour given off is vapour carried out, up to
// saturation.
Balance vapour_balance(const Shell&, const Around&, Celsius inside);

// Watts that the state takes to last.
double heat_taken(const Shell&, const Around&, const Balance&);

// The state by day, with the lamps on, or by night. A thermostat adds what its heaters can to hold
// the middle of the animals' day band, by night the low end of the night's.
Balance settle(const Shell&, const Around&, bool by_day);

// What the thermostat, or a person, is to hold; nothing without an animal whose band is known.
std::optional<Celsius> target(const Shell&, bool by_day);

}  // namespace loamsheet
