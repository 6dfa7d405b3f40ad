// water_constants: the numbers of misting and of the water day by day, each with its origin.
#pragma once
#include "base/units.h"

namespace loamsheet::constants {

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

// The share of a misting by which it is not worth setting the timer anew. Common practice.
inline constexpr double slight_change = 0.2;

// Days in which a timer brings a damp substrate to its level: faster, and it is soon set back.
// Common practice.
inline constexpr int made_up_over = 28;

// Pulls of a trigger in one misting from which a hand tires. Common practice.
inline constexpr double many_pulls = 60;

// The calendar and the water run at least so many days. Common practice.
inline constexpr int days_followed = 35;

// Dissolved minerals in water of each source, mg/L: common practice, for want of an analysis. What
// salt-shy plants bear in the water of the soil, mg/L: 1.3 dS/m after FAO Irrigation and Drainage
// Paper 29, by 640 mg/L for each (from memory).
inline constexpr double minerals_tap = 300, minerals_low = 10;
inline constexpr double minerals_borne = 830;

// Days after which a substrate is renewed anyway. Common practice.
inline constexpr int substrate_lasts = 365;

}  // namespace loamsheet::constants
