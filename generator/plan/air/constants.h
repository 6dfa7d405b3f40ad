// constants: the numbers of air and heat that are not the spec's and not the catalogue's, each
// with its origin.
#pragma once
#include "base/units.h"

namespace loamsheet::constants {

// The share of a lamp's power that warms the tank when the lamp hangs above it; the rest rises
// into the room. Common practice, for want of a measurement.
inline constexpr double lamp_heat_from_above = 0.5;

// Heat resistance of the still air at each face of a wall, m2 K/W. From memory, after ISO 6946.
inline constexpr double still_air_resistance = 0.13;

// The same over a floor that is colder than the air. From memory, after ISO 6946.
inline constexpr double floor_air_resistance = 0.17;

// Heat that still air brings to a wall by moving along it, without radiation, W/(m2 K). From
// memory, after ISO 6946. Divided by what a cubic metre of air takes up it is the speed at which
// vapour comes to the wall (Lewis).
inline constexpr double convects_to_wall = 2.5;

// Heat that one cubic metre of air takes up, J/K, and one kilogram of water as it evaporates, J.
// From memory: handbook values near 25 °C.
inline constexpr double air_heat_capacity = 1200;
inline constexpr double heat_of_evaporation = 2.45e6;

// Flow through a sharp-edged opening against the ideal. Common practice.
inline constexpr double discharge = 0.6;

// Exchange through a level opening with the warmer air below: Q = 0.055 A^(5/4) sqrt(g drho/rho).
// Epstein 1988, J. Heat Transfer 110:885 (from memory).
inline constexpr double level_exchange = 0.055;

// The air in a tank is never quite as warm as the room: the least difference that moves it, in
// kelvins. Common practice.
inline constexpr double least_difference = 0.5;

// How far the free openings and the wet area may be from what was worked out. Common practice.
inline constexpr Range<double> vent_spread{0.8, 1.2};
inline constexpr Range<double> evaporation_spread{0.8, 1.2};

// How far a measured loss may pull the evaporation from what was worked out. Common practice.
inline constexpr Range<double> evaporation_within{0.05, 20};

// Bands of an animal that is not known, and the narrowest that readings are weighed by: of relative
// humidity, and kelvins. Common practice.
inline constexpr double usual_humidity_band = 0.30, least_humidity_band = 0.05;
inline constexpr double usual_heat_band = 6, least_heat_band = 1;

// Rooms that people live in; no change of the tank asks for another. Common practice.
inline constexpr Range<Celsius> usual_room{{16}, {28}};

// The share of a closed lid that may be opened to dry the air. Common practice.
inline constexpr double lid_may_open = 0.9;

// How far under its nights an animal may be cooled once, by a power cut, in kelvins. Common
// practice.
inline constexpr Celsius cool_for_once{5};

// The share of the floor that evaporates as free water does, by the kind of build: common practice.
// What dry leaves let through that nobody mists: a full cover of organic mulch halves evaporation,
// FAO Irrigation and Drainage Paper 56 (1998), chapter 10 (from memory).
inline constexpr double wet_humid = 1.0;
inline constexpr double wet_temperate = 0.6;
inline constexpr double wet_arid = 0.05;
inline constexpr double dry_litter_lets_through = 0.5;

// Water that one potted plant gives off a day, kg: from the least of ornamentals in shops, Acta
// Horticulturae 644:39, to house plants in offices in summer, University of Reading 2024, Journal
// of Building Engineering (both read at second hand). The vapour deficit there, kPa, is from
// memory.
inline constexpr Range<double> leaves_give_off{0.007, 0.068};
inline constexpr double office_deficit = 1.3;

// By day the top is warmer than the middle, and the floor cooler, by this share of what the tank is
// warmer than the room. From memory.
inline constexpr double warm_top = 0.5;

// Hours of day where no lamp says how long it is. Common practice.
inline constexpr double usual_day = 12;

}  // namespace loamsheet::constants
