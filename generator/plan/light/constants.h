// constants: the numbers of light and UV that are not the spec's and not the catalogue's, each
// with its origin.
#pragma once
#include "base/units.h"

namespace loamsheet::constants {

// From this Ferguson zone on a meter is read at the basking place. Common practice.
inline constexpr double metered_zone = 3;

// The share of a lamp's light that walls, wood and leaves scatter into the shadow of a furnishing.
// From memory.
inline constexpr double scattered_into_shadow = 0.1;

// The day over which a light class is meant, for want of a stated one. Common practice.
inline constexpr double class_day = 12;

// No house plant wants more hours of lamp light than this. University of Illinois Extension, house
// plants: lighting. Fewer than the least are no day. Common practice.
inline constexpr double longest_day = 16, shortest_day = 8;

// What a plant's daily light may be off before it is more than a note: lumens are printed for a new
// lamp and fall by about this as it ages. Common practice.
inline constexpr double light_slack = 0.2;

// How far a lamp may be lifted, how near to the mesh it may rest, and the share of the height below
// which none hangs in a tank. Common practice.
inline constexpr Millimetres lamp_lift{400}, lamp_on_mesh{10};
inline constexpr double lowest_in_tank = 2.0 / 3;

// An animal's back above what it rests on. Common practice.
inline constexpr Millimetres back_height{50};

// The UV index beyond which it is called extreme. WHO, Global Solar UV Index (2002).
inline constexpr double extreme_uv = 11;

// The means of the UV index that animals of Ferguson's zones 1 to 4 were met in. Ferguson et al.
// 2010, Zoo Biology 29:317-334 (read at second hand).
inline constexpr Range<double> zone_mean[] = {{0, 0.7}, {0.7, 1.0}, {1.0, 2.6}, {2.6, 3.5}};

// The highest UV index that animals of Ferguson's zones 1 to 4 were met in. From memory.
inline constexpr double zone_highest[] = {1.4, 3.0, 7.4, 9.5};

// Leaf area over the ground that a crown stands on, and the share of light that a layer of leaves
// of that area as the ground takes on average. From memory.
inline constexpr double leaf_area_index = 2.0, extinction = 0.6;

}  // namespace loamsheet::constants
