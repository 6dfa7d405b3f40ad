// keys: the rows of the spec, one file a section, and the table that they make together.
#pragma once
#include <span>

#include "read/key.h"

namespace loamsheet {

std::span<const Key> build_keys();       // use, build, shop, print
std::span<const Key> enclosure_keys();   // enclosure, room
std::span<const Key> climate_keys();     // lamps, heaters, misting, water_source
std::span<const Key> layer_keys();       // layers, water_area, mixes, materials
std::span<const Key> furnishing_keys();  // furnishings
std::span<const Key> life_keys();        // animals, plants, crew, amendments
std::span<const Key> record_keys();      // stock, catalogue, quote, calendar, measured, ...

// What may stand in a file of specs/profiles: its own head, and the rows of the spec.
std::span<const Key> profile_keys();

// Flags that come together in the tables.
inline constexpr unsigned shared = flag::profile_ok;
inline constexpr unsigned needed = flag::required;
inline constexpr unsigned open_ok = flag::unknown_ok;

}  // namespace loamsheet
