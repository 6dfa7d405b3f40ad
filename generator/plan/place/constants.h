// constants: the measures and weights of placement that are not the spec's and not the
// catalogue's, each with its origin.
#pragma once
#include "base/units.h"

namespace loamsheet::constants {

// A grid finer than this moves no plant by more than a hand does; mounts are fixed more
// coarsely. Common practice.
inline constexpr Millimetres floor_step{25}, mount_step{50}, pocket_step{50};

// Ground kept free: what a door sweeps and a hand reaches through, before the mouth of a hide, and
// around what stands, so that no root ball is squeezed. Common practice.
inline constexpr Millimetres door_strip{50}, mouth{80}, beside_things{20};

// Across and deep, for a furnishing whose size is not stated. Common practice.
inline constexpr Millimetres unsized_thing{120};

// From this mature height a plant belongs at the back and the sides; one that builders set in the
// middle ground, from the second. Common practice, and from memory.
inline constexpr Millimetres tall_plant{200}, tall_between{450};

// A plant that would spread wider than this share of the shorter side is trimmed. Common practice.
inline constexpr double widest_share = 0.5;

// A foot stands no nearer to a wall than this, or than this share of its spread: leaves may touch
// the glass, roots need the ground. Common practice.
inline constexpr Millimetres least_from_wall{20};
inline constexpr double wall_share = 0.25;

// Ground covers may grow into their neighbours by this share. Common practice.
inline constexpr double ground_cover_overlap = 0.30;

// Light by so many times outside its band, and air by so much drier than its least, fits not at
// all. From memory.
inline constexpr double light_off = 4.0;
inline constexpr Fraction humidity_off{0.30};

// A trailer shows fully over so much free drop; a climber holds on within so far of a wall.
// Common practice.
inline constexpr Millimetres full_drop{300}, near_support{60}, far_support{250};

// A focal plant stands so far from the centre towards a side: about a third. Common practice.
inline constexpr double focal_to_side = 0.35;

// How far back low plants stand, from the lowest to those that just are not tall: shares of the
// depth. Common practice.
inline constexpr double low_in_front = 0.25, low_behind = 0.55;

// A plant this high hides a basking place that it stands before, and is worth so much there for
// its habit. From memory.
inline constexpr Millimetres hides_view{120};
inline constexpr double view_share = 0.4;

}  // namespace loamsheet::constants
