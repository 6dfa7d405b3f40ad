// constants: the measures of layers, fixings and doses that are not the spec's and not the
// catalogue's, each with its origin.
#pragma once
#include "base/units.h"

namespace loamsheet::constants {

// Of the first watering, the share of the deficit that runs through before the substrate is wetted
// evenly, and then stands in the drainage layer. Common practice.
inline constexpr Fraction runs_through{0.10};

// Air left between the standing water and the separator. Common practice.
inline constexpr Millimetres air_gap{10};

// A drainage layer of granules that is thinner than this holds too little. Common practice.
inline constexpr Millimetres shallow_drainage{50};

// Standing water from which a person should look at it after the first watering. Common practice.
inline constexpr Millimetres high_water{25};

// The share of a stand's rated load that should stay free. Common practice.
inline constexpr Fraction stand_reserve{0.20};

// The share of the height that should stay free above the layers. Common practice.
inline constexpr Fraction free_height{1.0 / 3.0};

// Loose substrate steeper than this slides: its angle of repose. Common practice.
inline constexpr double steepest_degrees = 35;

// What is left open beside a piece that holds a terrace, or between it and the edge, lets no
// substrate through. Common practice.
inline constexpr Millimetres gap_held{20};

// Drainage granules denser than this, in bulk, are rock or gravel. Common practice.
inline constexpr KilogramsPerCubicMetre heavy_granules{1000};

// Gravity, m/s2: standard value, NIST SP 811.
inline constexpr double gravity{9.80665};

// The tank is planted and weighed at room temperature. Common practice.
inline constexpr Celsius room{20};

// How far neighbouring strips of a separator lie over one another, and how wide a roll is of which
// that is not known. Common practice.
inline constexpr Millimetres strip_overlap{50};
inline constexpr Millimetres usual_roll{1000};

// Supports of a raised floor stand no further apart. Common practice.
inline constexpr Millimetres support_spacing{150};

// The dam of a water area stands so far above the water. Common practice.
inline constexpr Millimetres dam_freeboard{20};

// Animals of one culture as it is sold. Common practice.
inline constexpr double springtails_of_culture{1000};
inline constexpr double dwarf_isopods_of_culture{25};
inline constexpr double crew_of_culture{20};

// A load that is set down suddenly bears down with twice its weight: strength of materials.
inline constexpr double sudden_load{2};

// A teaspoon, litres: the metric one of 5 mL.
inline constexpr Litres teaspoon{0.005};

}  // namespace loamsheet::constants
