// water_days: misting and the water balance, day by day through establishment.
#pragma once
#include <optional>
#include <vector>

#include "base/units.h"
#include "check/build.h"
#include "plan/climate.h"
#include "plan/quantities.h"

namespace loamsheet {

// In equals out plus stored, each day, to a millilitre.
struct WaterDay {
  int day = 0;  // 0 is the planting day, with the first watering in it
  int mistings = 0;
  Litres mist;           // in the whole day
  double each = 0;       // one misting by hand: seconds of the pump, or pulls
  Litres lost, drained;  // as vapour through the vents; past the substrate
  Millimetres standing;  // at the end of the day
};

struct UpkeepPlan {
  std::vector<WaterDay> days;
  bool by_hand = false;              // `each` counts pulls, not seconds
  std::optional<double> fill_every;  // days between fills of the mist tank
  // What runs over when the mister's tank empties into the vivarium: the timer stuck on.
  std::optional<Litres> stuck_on_overflow;
  std::optional<int> regime_from;  // the day from which the animal's own regime holds
};

// Nothing without a mister in the spec. `through` is the last day worked out.
std::optional<UpkeepPlan> plan_upkeep(const Build&, const LayersPlan&, const AirPlan&, int through);

}  // namespace loamsheet
