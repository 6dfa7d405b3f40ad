#include "plan/plan.h"

#include <algorithm>

#include "plan/constants.h"
#include "plan/findings.h"
#include "plan/pull_list.h"
#include "plan/scenario.h"
#include "plan/water.h"

namespace loamsheet {
namespace {

template <class T>
Range<T> typed(const Range<double>& range) {
  return {T{range.low}, T{range.high}};
}

MassPlan plan_mass(const Build& build, const Decisions& decisions) {
  MassPlan plan;
  plan.empty = decisions.empty;
  plan.dry = typed<Kilograms>(sweep(build, decisions, [](const Result& r) { return r.dry.v; }));
  plan.wet = typed<Kilograms>(sweep(build, decisions, [](const Result& r) { return r.wet.v; }));
  if (const auto rating = build.enclosure.stand_rating) {
    plan.stand_margin = {*rating - plan.wet.high, *rating - plan.wet.low};
  }
  return plan;
}

WaterPlan plan_water(const Build& build, const Decisions& decisions) {
  WaterPlan plan;
  plan.highest_standing = decisions.highest_standing;
  if (!watered_through(build)) return plan;
  plan.first_watering =
      typed<Litres>(sweep(build, decisions, [](const Result& r) { return r.first_watering.v; }));
  if (!decisions.layers.drainage) return plan;
  plan.standing =
      typed<Millimetres>(sweep(build, decisions, [](const Result& r) { return r.standing.v; }));
  return plan;
}

// The clock starts again when the tank was moved.
Ready plan_ready(const Identity& identity) {
  const bool moved = identity.moved && identity.moves_on && *identity.moves_on > identity.plant_on;
  const Date disturbed = moved ? *identity.moves_on : identity.plant_on;
  const Date earliest = plus_days(disturbed, constants::days_empty);
  return {earliest,
          days_between(identity.plant_on, earliest),
          {moved ? "after-move" : "after-planting"}};
}

bool depends_on_unknown(const Build& build, const Decisions& decisions) {
  for (size_t i = 0; i < build.unknowns.size(); ++i) {
    // What nothing is worked out from yet cannot be shown not to matter.
    if (!build.unknowns[i].used || matters(build, decisions, i)) return true;
  }
  return false;
}

Status status(const Build& build, const Decisions& decisions, const std::vector<Finding>& found) {
  const bool stopped = std::any_of(found.begin(), found.end(),
                                   [](const Finding& f) { return f.weight == Weight::stop; });
  if (stopped) return Status::not_cleared;
  return depends_on_unknown(build, decisions) ? Status::provisional : Status::cleared;
}

}  // namespace

Plan make_plan(const Build& build) {
  const Decisions decisions = decide(build);
  Plan plan;
  plan.footprint_area = area(build.enclosure.footprint);
  plan.footprint_perimeter = perimeter(build.enclosure.footprint);
  plan.layers = decisions.layers;
  plan.mass = plan_mass(build, decisions);
  plan.water = plan_water(build, decisions);
  plan.pull_list = pull_list(build, plan.layers);
  plan.ready = plan_ready(build.identity);
  plan.findings = all_findings(build, plan);
  plan.status = status(build, decisions, plan.findings);
  return plan;
}

}  // namespace loamsheet
