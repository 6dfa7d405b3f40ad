// constants: the numbers of the plan that are not the spec's and not the catalogue's, each with
// its origin.
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

// Animals that want the air at least so humid are misted for twice a day. Common practice.
inline constexpr Fraction wet_air{0.70};

// The shortest burst of a pump that wets leaves, in seconds, and the fewest pulls of a trigger.
// Common practice.
inline constexpr double shortest_burst = 3;
inline constexpr double fewest_pulls = 5;

// Seconds that a pump's timer is set by, once a burst is so long that it does not matter. Common
// practice.
inline constexpr double timer_step = 5;
inline constexpr double long_burst = 30;

// Days after which water that stands in a mist tank is renewed. Common practice.
inline constexpr int stale_after = 14;

// The share of a misting by which it is not worth setting the timer anew. Common practice.
inline constexpr double slight_change = 0.2;

// Days in which a timer brings a damp substrate to its level: faster, and it is soon set back.
// Common practice.
inline constexpr int made_up_over = 28;

// Pulls of a trigger in one misting from which a hand tires. Common practice.
inline constexpr double many_pulls = 60;

// The calendar and the water run at least so many days. Common practice.
inline constexpr int days_followed = 35;

// The height of a stand that the spec does not state. Common practice.
inline constexpr Millimetres usual_stand{750};

// What one person lifts alone at most, near the waist and close to the body: the smaller of the
// two peak values of HSE INDG143, "Manual handling at work".
inline constexpr Kilograms alone_at_most{16};

// The share of the height that should stay free above the layers. Common practice.
inline constexpr Fraction free_height{1.0 / 3.0};

// Loose substrate steeper than this slides: its angle of repose. Common practice.
inline constexpr double steepest_degrees = 35;

// What is left open beside a piece that holds a terrace, or between it and the edge, lets no
// substrate through. Common practice.
inline constexpr Millimetres gap_held{20};

// Drainage granules denser than this, in bulk, are rock or gravel. Common practice.
inline constexpr KilogramsPerCubicMetre heavy_granules{1000};

// The tank stands empty of animals at least so long after planting or a move. Common practice.
inline constexpr int days_empty = 30;

// Grown climbers without claws and lighter than this pull no plant loose. Common practice.
inline constexpr Kilograms light_climber{0.02};

// Grown animals from this mass on flatten what is not yet rooted. Common practice.
inline constexpr Kilograms heavy_animal{0.1};

// A tank that is moved sooner after planting carries plants that have not rooted. Common practice.
inline constexpr int days_before_move = 14;

// Stones from this mass on stand on the base: where an animal digs, and elsewhere. Common practice.
inline constexpr Kilograms heavy_stone_digging{1};
inline constexpr Kilograms heavy_stone{2};

// Gravity, m/s2: standard value, NIST SP 811.
inline constexpr double gravity{9.80665};

// How wide a sack is, seen by who lifts it, in centimetres. Common practice.
inline constexpr double sack_width{40};

// The tank is planted and weighed at room temperature. Common practice.
inline constexpr Celsius room{20};

}  // namespace loamsheet::constants
