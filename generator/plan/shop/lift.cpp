#include "plan/shop/lift.h"

#include <algorithm>

#include "plan/fill/bulk_named.h"
#include "plan/shop/constants.h"
#include "plan/shop/pull_item.h"

namespace loamsheet {
namespace {

// Smooth glass without handles.
constexpr double poor = 0.90;

// How far the hands are from the ankles when a load so wide is held at its sides (page 8).
double reach(double width_cm, double vertical_cm) {
  return (vertical_cm < 25 ? 25 : 20) + width_cm / 2;
}

LiftTask task_at(double vertical_cm, double travel_cm, double width_cm) {
  LiftTask task;
  task.horizontal = reach(width_cm, vertical_cm);
  task.vertical = vertical_cm;
  task.travel = travel_cm;
  task.coupling = poor;
  return task;
}

// From the room's floor to the top of the stand, whichever end is harder.
LiftTask harder_end(const Enclosure& enclosure, double width_cm) {
  const double top = enclosure.stand_height.value_or(constants::usual_stand).v / 10;
  const LiftTask below = task_at(0, top, width_cm), above = task_at(top, top, width_cm);
  return weight_limit(below) < weight_limit(above) ? below : above;
}

// What so many people may lift together, each of whom may lift `each`.
Kilograms team_limit(int people, Kilograms each) {
  constexpr double share[] = {1, 2.0 / 3, 1.0 / 2};
  return each * (people * share[people - 1]);
}

// As heavy as the material may be as it is placed.
Kilograms sack_mass(const Build& build, const PullItem& item, const Pack& pack) {
  if (pack.sold_unit == "kg") return {pack.sold};
  const Bulk* bulk = bulk_named(build.layers, item.item);
  if (!bulk || item.unit != "L") return {};
  const double water = bulk->moisture_as_placed.range.high.v * 1000;
  return {pack.size * (bulk->dry_density.high.v + water) / 1000};
}

}  // namespace

std::optional<SackLift> plan_sack(const Build& build, const std::vector<PullItem>& list) {
  SackLift heaviest;
  for (const PullItem& item : list) {
    for (const Pack& pack : item.packs) {
      const Kilograms mass = sack_mass(build, item, pack);
      if (mass > heaviest.mass) heaviest.item = item.item, heaviest.mass = mass;
    }
  }
  if (heaviest.item.empty()) return std::nullopt;
  heaviest.task = harder_end(build.enclosure, constants::sack_width);
  heaviest.limit = weight_limit(heaviest.task);
  if (heaviest.limit.v > 0) heaviest.index = heaviest.mass / heaviest.limit;
  heaviest.people = heaviest.mass <= heaviest.limit ? 1 : 2;
  return heaviest;
}

LiftPlan plan_lift(const Build& build, Kilograms empty) {
  const Enclosure& enclosure = build.enclosure;
  LiftPlan plan;
  plan.task = harder_end(enclosure, enclosure.depth.v / 10);
  plan.limit = weight_limit(plan.task);
  if (plan.limit.v > 0) plan.empty_index = empty / plan.limit;
  const bool alone = empty <= plan.limit && empty <= constants::alone_at_most;
  if (alone) return plan;
  const Kilograms each = weight_limit(harder_end(enclosure, 0));
  plan.people = empty <= team_limit(2, each) ? 2 : 3;
  plan.by_hand = empty <= team_limit(3, each);
  return plan;
}

}  // namespace loamsheet
