// field_units: the units that fields are written in, as they end a field's key.
#pragma once
#include <string_view>

#include "base/units.h"

namespace loamsheet {

// A unit for amounts of one kind; so many of it make one of what the amount is kept in. Of `void`:
// for what is kept as a bare number.
template <class Tag>
struct UnitOf {
  std::string_view name;
  double times = 1;
};

template <class Tag>
constexpr UnitOf<void> plain(const UnitOf<Tag>& unit) {
  return {unit.name, unit.times};
}

namespace unit {

inline constexpr UnitOf<LitreUnit> l{"l"}, ml{"ml", 1000}, ml_h{"ml_h", 1000};
inline constexpr UnitOf<KilogramUnit> kg{"kg"}, g{"g", 1000};
inline constexpr UnitOf<DensityUnit> kg_m3{"kg_m3"};
inline constexpr UnitOf<MillimetreUnit> mm{"mm"}, m{"m", 0.001};
inline constexpr UnitOf<SquareMetreUnit> m2{"m2"};
inline constexpr UnitOf<CelsiusUnit> c{"c"};
inline constexpr UnitOf<FractionUnit> pct{"pct", 100};

inline constexpr UnitOf<void> none{""}, place_mm{"mm"}, share_pct{"pct", 100}, k{"k"}, l_s{"l_s"},
    w{"w"}, n{"n"}, kpa{"kpa"}, mg_l{"mg_l"}, kg_m2{"kg_m2"}, ppfd{"umol_m2_s"}, dli{"mol_m2_d"},
    days{"d"}, lm{"lm"}, h{"h"}, deg{"deg"};

}  // namespace unit
}  // namespace loamsheet
