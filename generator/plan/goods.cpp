#include "plan/goods.h"

#include "plan/mass.h"
#include "plan/packs.h"
#include "plan/pull_list.h"
#include "plan/supplies.h"

namespace loamsheet {
namespace {

// The stand carries the tank on the outside of its base: the inside floor and its walls, corners
// left out.
Range<double> stand_load(const Build& build, const Plan& plan) {
  const double walls = plan.footprint_perimeter.v * build.enclosure.walls.thickness.v / 1e6;
  const double base = plan.footprint_area.v + walls;
  return {plan.mass.wet.low.v / base, plan.mass.wet.high.v / base};
}

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

}  // namespace

void add_goods(const Build& build, const Decisions& decisions, Plan& plan) {
  plan.mass.stand_load = stand_load(build, plan);
  plan.marks = plan_marks(build, plan.layers, plan.water);
  plan.water_area = plan_water_area(build, plan.layers);
  plan.cuts = plan_cuts(build, plan.layers, plan.water_area);
  plan.supports = plan_supports(build, plan.layers);
  plan.doses = plan_doses(build, plan.layers);
  plan.crew = plan_crew(build);
  plan.fixed = plan_fixed(build);
  plan.transport = plan_transport(build, decisions);
}

void add_shopping(const Build& build, Plan& plan) {
  plan.pull_list = pull_list(build, plan);
  plan.tools = tools_among(build, task_needs(build, plan));
  choose_packs(build, plan.pull_list);
  plan.quote = plan_quote(build, plan.pull_list);
  plan.sack = plan_sack(build, plan.pull_list);
}

}  // namespace loamsheet
