// placement_needs: what one plant asks of its place, from its facts; where nobody knows a mature
// size, that of its habit stands in (common practice).
#pragma once
#include <optional>
#include <string>

#include "base/geometry.h"
#include "base/units.h"
#include "check/build.h"

namespace loamsheet {

// How it grows, as far as that decides its place. `low` and `tall` stand by themselves.
enum class Habit { climber, trailer, creeper, moss, epiphyte, low, tall };

struct Needs {
  Habit habit = Habit::low;
  bool mountable = false;
  bool focal = false;                // a plant to look at
  bool dry = false, wet = false;     // what its roots want
  Range<Millimetres> height;         // mature; from zero for what is led or trimmed to fit
  Millimetres spread;                // mature, as the enclosure lets it grow
  Millimetres root;                  // depth of substrate
  Range<double> ppfd;                // umol m-2 s-1; {0, 0} when not known
  std::optional<Fraction> humidity;  // least
  SoftWeights soft;                  // how much each soft rule counts
  bool operator==(const Needs&) const = default;
};

Needs needs_of(const PlantUse&, const Enclosure&);
Needs needs_in(const Build&, const PlantUse&);  // with the build's own weights

}  // namespace loamsheet
