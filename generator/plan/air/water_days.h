// water_days: misting and the water balance, day by day through establishment.
#pragma once
#include <optional>
#include <vector>

#include "base/units.h"
#include "check/build.h"
#include "plan/fill/quantities.h"

namespace loamsheet {

class FieldSink;
struct AirPlan;

// In equals out plus what the store gained, each day: watered + mist = lost + drained + stored less
// what was stored the day before.
struct WaterDay {
  int day = 0;  // 0 is the planting day
  int mistings = 0;
  Litres watered;        // the first watering, on day 0
  Litres mist;           // in the whole day
  double each = 0;       // one misting by hand: seconds of the pump, or pulls
  Litres lost, drained;  // as vapour through the vents; past the substrate
  Litres stored;         // in the substrate, at the end of the day
  Millimetres standing;  // at the end of the day
};

struct UpkeepPlan {
  std::vector<WaterDay> days;
  Litres placed;                     // in the substrate as it went in
  bool by_hand = false;              // `each` counts pulls, not seconds
  std::optional<double> fill_every;  // days between fills of the mist tank, at the wettest
  // What runs over when the mister's tank empties into the vivarium: the timer stuck on.
  std::optional<Litres> stuck_on_overflow;
  std::optional<int> regime_from;  // the day from which the animal's own regime holds
  std::optional<int> flush_every;  // days in which salts gather where nothing drains away
};
void fields(const UpkeepPlan&, FieldSink&);

// Whole days that a full mist tank surely lasts, at least one. Nothing where none has to be filled.
std::optional<int> tank_lasts(const UpkeepPlan&);

// The last day that is followed: through the calendar, and at least to the animal's day.
int last_day(const Build&, int ready_days);

// Nothing without a mister in the spec. `through` is the last day worked out. The air's loss is
// taken at the middle of its ranges, twelve hours of day and of night, half winter and half summer.
// Below the refill point it falls with what is left (FAO Irrigation and Drainage Paper 56, equation
// 84, with nothing held back at wilting). A measured loss stands in its place.
std::optional<UpkeepPlan> plan_upkeep(const Build&, const LayersPlan&, const AirPlan&, int through);

}  // namespace loamsheet
