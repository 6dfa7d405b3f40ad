// balance: heat and vapour of a tank in steady state, between its lamps, heaters and wet floor on
// one side and its walls and openings on the other.
#pragma once
#include <optional>
#include <vector>

#include "check/build.h"
#include "plan/air/vents.h"

namespace loamsheet {

// Gives the tank so many watts while its air is cooler than where it stops, if it stops anywhere.
struct HeatSource {
  double watts = 0;
  std::optional<Celsius> stops_at = std::nullopt;
};
using HeatSources = std::vector<HeatSource>;

// What of a build the balance needs.
struct Shell {
  std::vector<Vent> openings;
  double panes = 0;       // m2 of walls and closed top
  double resistance = 1;  // of those from air to air, m2 K/W
  double wet = 0;         // m2 that evaporate as free water does
  int plants = 0;
  HeatSources lamps;                         // as long as they are lit
  HeatSources always;                        // heaters that no thermostat holds
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

// The state that so many watts hold, and what sources give on top.
Balance warmed_by(const Shell&, const Around&, double watts);
Balance warmed_by(const Shell&, const Around&, double watts, const HeatSources&);

// What gives heat by day or by night whatever a thermostat lets on: heaters, then the lamps.
HeatSources free_heat(const Shell&, bool by_day);

// The state by day, with the lamps on, or by night. A thermostat adds what its heaters can to hold
// the middle of the animals' day band, by night the low end of the night's.
Balance settle(const Shell&, const Around&, bool by_day);

// The share of its watts that each source of free heat gives in that state.
std::vector<double> shares_given(const Shell&, const Around&, bool by_day);

// All that sources give that do not stop under a temperature; all of them without one.
double watts_at(const HeatSources&, Celsius);
double full_watts(const HeatSources&);

// What the thermostat, or a person, is to hold; nothing without an animal whose band is known.
std::optional<Celsius> target(const Shell&, bool by_day);

}  // namespace loamsheet
