// readings: what to measure first to know the enclosure better.
#pragma once
#include <string>
#include <vector>

#include "base/units.h"
#include "check/build.h"

namespace loamsheet {

class FieldSink;

struct FirstReading {
  std::string of;            // room-humidity, room-temperature, openings, water-lost, basking, uv
  double humidity = 0;       // by how much it moves the tank's relative humidity, as a share
  double warmth = 0;         // by how many kelvins it moves the air
  Range<Celsius> celsius{};  // what was worked with, of a temperature
  Range<Fraction> share{};   // what was worked with, of a humidity
};
void fields(const FirstReading&, FieldSink&);

// At most three, the most telling first. A UV index that must be metered and a basking place, which
// no balance gives, come before what moves the air. Of the rest each is taken at both of its ends
// while everything else is in its middle; it counts by how much of the animal's own band of
// humidity or temperature it crosses, at the worst of winter and summer, day and night.
std::vector<FirstReading> first_readings(const Build&);

}  // namespace loamsheet
