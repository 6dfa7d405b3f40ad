// lift: who may lift the empty tank onto its stand. Revised NIOSH lifting equation: Waters,
// Putz-Anderson and Garg, DHHS (NIOSH) 94-110, revised 9/2021.
#pragma once
#include "base/units.h"
#include "check/build.h"

namespace loamsheet {

// Centimetres, degrees, lifts a minute; coupling 1.00 good, 0.95 fair, 0.90 poor.
struct LiftTask {
  double horizontal = 25, vertical = 75, travel = 25, twist = 0, per_minute = 0.2, coupling = 1;
};

// The recommended weight limit.
Kilograms weight_limit(const LiftTask&);

struct LiftPlan {
  LiftTask task;           // the harder end of the lift
  double empty_index = 0;  // load over limit, for one person
  Kilograms limit;         // of one person
  int people = 1;          // as many as bring the index to 1 or less; two at least
};

LiftPlan plan_lift(const Build&, Kilograms empty);

}  // namespace loamsheet
