// climate: the room, lamps, heaters and misting, as checked.
#pragma once
#include <optional>
#include <string>
#include <utility>
#include <vector>

#include "base/money.h"
#include "base/span.h"
#include "base/units.h"
#include "check/known.h"
#include "kinds/heater.h"
#include "kinds/lamp.h"
#include "kinds/one_of.h"

namespace loamsheet {

// A place in the enclosure, millimetres from the floor's front-left inside corner.
struct Position {
  double x = 0, y = 0, z = 0;
};

// Over the year: low is the winter end of the temperature, high the summer end.
struct Room {
  Uncertain<Celsius> temperature;
  Uncertain<Fraction> humidity;
  bool stated = false;          // false: the defaults of the key table stand in
  std::optional<Money> tariff;  // of a kilowatt hour
  Span where;
};

struct Lamp {
  OneOf<LampKind> kind;
  std::string id;
  Position at;
  Millimetres length, width;   // along and across, of a line or panel
  double beam = 0;             // degrees, full angle at half intensity; of a beam
  double flux = 0;             // lumens; 0 for a lamp that gives none worth counting
  double photons_per_lux = 0;  // umol m-2 s-1 per lux, by its spectrum
  double power = 0;            // watts
  double hours = 0;            // a day
  std::vector<std::pair<Millimetres, double>> uv_index;  // measured in open air, by distance
  Span where;

  // Each with the key of the spec that it is from. A kind has either a length or a width.
  template <class Visit>
  void keys(Visit visit) {
    visit("id", id), visit("kind", kind), visit("at", at);
    visit("length", length), visit("width", length), visit("depth", width), visit("beam", beam);
    visit("flux", flux), visit("power", power), visit("hours", hours);
  }
};

struct Heater {
  OneOf<HeaterKind> kind;
  double power = 0;  // watts
  bool thermostat = false;
  Span where;
  std::optional<Celsius> cut_out{};  // at which a second device of its own cuts it off

  // Each with the key of the spec that it is from.
  template <class Visit>
  void keys(Visit visit) {
    visit("kind", kind), visit("power", power);
    visit("thermostat", thermostat), visit("cut_out", cut_out);
  }
};

// Exactly one of the two kinds gives an amount.
struct Misting {
  bool by_hand = false;
  bool fogger = false;  // nozzles that give fog, which hangs in the air
  int nozzles = 0;
  Uncertain<Litres> flow;  // of one nozzle, litres a minute
  Uncertain<Litres> pull;  // of one pull of the trigger, litres
  std::optional<Litres> tank;
  Span where;
};

}  // namespace loamsheet
