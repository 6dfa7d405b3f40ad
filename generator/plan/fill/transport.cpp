#include "plan/fill/transport.h"

#include "check/build.h"
#include "plan/fill/mass.h"
#include "plan/fill/scenario.h"

namespace loamsheet {

std::optional<TransportPlan> plan_transport(const Build& build, const Decisions& decisions) {
  if (!build.identity.moved) return std::nullopt;
  TransportPlan plan;
  plan.date = build.identity.moves_on;
  const auto range = sweep(build, decisions, [](const Result& r) { return r.moved.v; });
  plan.mass = {{range.low}, {range.high}};
  for (const Standing& thing : build.standing) {
    if (!loose_stone(thing)) continue;
    plan.stones.push_back(thing.id);
    plan.taken_out += thing.mass.value_or(Kilograms{});
  }
  return plan;
}

}  // namespace loamsheet
