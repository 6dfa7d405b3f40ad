// balance: heat and vapour of a tank in steady state, between its lamps, heaters and wet floor on
// one side and its walls and openings on the other.
#pragma once
#include <optional>
#include <vector>

#include "check/build.h"
#include "plan/air/vents.h"

namespace loamsheet {

// What of a build the balance needs.
struct Shell {
  std::vector<Vent> openings;
  double panes = 0;       // m2 of walls and closed top
  double resistance = 1;  // of those from air to air, m2 K/W
  double wet = 0;         // m2 that evaporate as free water does
  int plants = 0;
  double lamps = 0;                          // W of the lamps that warm the tank
  double always = 0;                         // W of heaters that no thermostat holds
  double held = 0;                           // W of heaters that a thermostat holds
  std::optional<Range<Celsius>> day, night;  // what every animal is kept at
};
Shell tank_of(const Build&);

// Gives the tank the openings and panes of an enclosure.
void set_enclosure(Shell&, const Enclosure&);

// W/K that the walls and the closed top lose.
inline double wall_loss(const Shell& tank) {
  return tank.panes / tank.resistance;
}

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
  double flow = 0;       // m3/s
  double given = 0;      // kg of vapour an hour from floor and leaves
  double lost = 0;       // of it, what leaves through the openings
  double condensed = 0;  // of it, what runs down the panes
};

// The state when the tank is as warm as given: vapour given off is vapour carried out and condensed
// on panes that are colder than its dew point.
Balance vapour_balance(const Shell&, const Around&, Celsius inside);

// Watts that the state takes to last: through the panes, with the air, as vapour.
double heat_taken(const Shell&, const Around&, const Balance&);

// The state that so many watts hold.
Balance warmed_by(const Shell&, const Around&, double watts);

// The state by day, with the lamps on, or by night. A thermostat adds what its heaters can to hold
// the middle of the animals' day band, by night the low end of the night's.
Balance settle(const Shell&, const Around&, bool by_day);

// What the thermostat, or a person, is to hold; nothing without an animal whose band is known.
std::optional<Celsius> target(const Shell&, bool by_day);

}  // namespace loamsheet
