// lift: who may lift the empty tank onto its stand. Revised NIOSH lifting equation: Waters,
// Putz-Anderson and Garg, DHHS (NIOSH) 94-110, revised 9/2021.
#pragma once
#include <optional>
#include <string>
#include <vector>

#include "base/units.h"
#include "check/build.h"

namespace loamsheet {

class FieldSink;

// One end of a lift: centimetres, degrees, lifts a minute for at most an hour in all; coupling
// 1.00 good, 0.95 fair, 0.90 poor.
struct LiftTask {
  double horizontal = 25, vertical = 75, travel = 25, twist = 0, per_minute = 0.2, coupling = 1;
};

struct PullItem;

// What each end of the lift takes from the load constant, 0 to 1; zero beyond its reach.
struct LiftMultipliers {
  double horizontal = 1, vertical = 1, distance = 1, asymmetry = 1, frequency = 1, coupling = 1;
};
void fields(const LiftMultipliers&, FieldSink&);
LiftMultipliers multipliers(const LiftTask&);

// The recommended weight limit: 23 kg times all multipliers.
Kilograms weight_limit(const LiftTask&);

struct LiftPlan {
  LiftTask task;                      // the harder end of the lift, by one person
  std::optional<double> empty_index;  // load over limit; nothing beyond the equation's reach
  Kilograms limit;                    // of one person lifting alone
  int people = 1;                     // three at most
  bool by_hand = true;                // false: too heavy for three, so use lifting gear
};

// A team holds the tank at its ends, close to the body. Two bear 2/3 of the sum of what each may
// lift, three bear 1/2 of it (HSE, as quoted by Network Rail, "Lifting and handling in teams").
LiftPlan plan_lift(const Build&, Kilograms empty);

// The heaviest sack of the pull list, from the floor to the edge of the tank.
struct SackLift {
  std::string item;
  Kilograms mass;
  LiftTask task;  // the harder end
  Kilograms limit;
  std::optional<double> index;
  int people = 1;  // two at most; a heavier sack is parted
};
void fields(const SackLift&, FieldSink&);

// Sacks weigh what the material may weigh at most as it is placed. Nothing without packs in sacks.
std::optional<SackLift> plan_sack(const Build&, const std::vector<PullItem>&);

}  // namespace loamsheet
