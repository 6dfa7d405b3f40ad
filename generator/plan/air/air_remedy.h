// mend: the least change to an enclosure that brings its air into a band, found by solving the
// balance for it at the worst of what is not known well.
#pragma once
#include <optional>

#include "check/build.h"

namespace loamsheet {

struct Mend {
  enum class What {
    cover_mesh,  // this share of every mesh
    open_lid,    // so many more square metres of free lid
    add_heater,  // of so many watts, on a thermostat
    dim_lamps,   // by so many watts in all
    warm_room,   // to this temperature at least, in winter
    cool_room    // to this temperature at most, in summer
  } what;
  double amount = 0;
};

// Each is a change that costs nothing before one that costs money; nothing where none is enough.
// Amounts are rounded to the next step that is enough: 5 %, 10 cm2, 5 W, half a kelvin.
std::optional<Mend> for_damper_air(const Build&, Celsius room, Fraction least);
std::optional<Mend> for_drier_air(const Build&, Celsius room, Fraction most);
std::optional<Mend> for_warmer_winter(const Build&, Celsius least, bool by_day);
std::optional<Mend> for_cooler_summer(const Build&, Celsius most);

// The build with the change made.
Build mended(Build, const Mend&);

}  // namespace loamsheet
