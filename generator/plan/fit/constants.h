// constants: the limits by which animals, their furniture and the crew are judged, each with its
// origin.
#pragma once
#include "base/units.h"

namespace loamsheet::constants {

// Grown climbers without claws and lighter than this pull no plant loose. Common practice.
inline constexpr Kilograms light_climber{0.02};

// Grown animals from this mass on flatten what is not yet rooted. Common practice.
inline constexpr Kilograms heavy_animal{0.1};

// Stones from this mass on stand on the base: where an animal digs, and elsewhere. Common practice.
inline constexpr Kilograms heavy_stone_digging{1};
inline constexpr Kilograms heavy_stone{2};

// The least enclosures of the catalogue are for one or two animals; each further one takes so much
// more floor. Germany, 1997 report on minimum requirements for reptiles (restated by keepers).
inline constexpr int housed_by_least = 2;
inline constexpr Fraction floor_for_another{0.15};

// Less than this share of the floor that a grown animal needs is no home. Common practice.
inline constexpr Fraction far_too_small{0.5};

// The share of the height that layers may take from what an animal needs. Common practice.
inline constexpr Fraction layers_take{1.0 / 3.0};

// Air on average, below which the ground dries out too far for plants of bogs. Common practice.
inline constexpr Fraction bog_air{0.60};

// How far from right under a lamp its basking place may lie. Common practice.
inline constexpr Millimetres under_lamp{150};

// Water up to this share of its length does not drown an animal that drinks from a dish, or one
// that soaks. Common practice.
inline constexpr Fraction stands_in_water{0.5};
inline constexpr Fraction soaks_in_water{1.0};

// Water in which food insects drown. Common practice.
inline constexpr Millimetres drowns_insects{20};

// Damp soil so deep that eggs can be buried in it. Common practice.
inline constexpr Millimetres laying_depth{100};

// The width of food insects (fruit flies, crickets) by their length. From memory.
inline constexpr Fraction feeder_width_share{0.3};

// Grown animals up to this length are small enough for large wood lice to bite, and eat the crew
// themselves. Common practice.
inline constexpr Millimetres bitten_length{80};
inline constexpr Millimetres eats_crew_length{120};

// Kilograms of grown animals on a square metre of floor, from which their droppings are more than
// a crew takes away. Common practice.
inline constexpr double crew_copes_with = 0.5;

// Air from which plants of dry places rot. Common practice.
inline constexpr Fraction damp_air{0.70};

}  // namespace loamsheet::constants
