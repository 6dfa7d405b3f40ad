#include "plan/plan.h"

#include <algorithm>

#include "plan/calendar.h"
#include "plan/earlier.h"
#include "plan/findings.h"
#include "plan/goods.h"
#include "plan/order.h"
#include "plan/readiness.h"
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

bool depends_on_unknown(const Build& build, const Decisions& decisions) {
  for (size_t i = 0; i < build.unknowns.size(); ++i) {
    if (matters(build, decisions, i)) return true;
    if (air_depends_on(build, static_cast<int>(i))) return true;
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

Plan make_plan(const Build& build, std::vector<Selection> selections) {
  const Decisions decisions = decide(build);
  Plan plan;
  plan.selections = std::move(selections);
  plan.footprint_area = area(build.enclosure.footprint);
  plan.footprint_perimeter = perimeter(build.enclosure.footprint);
  plan.layers = decisions.layers;
  plan.mass = plan_mass(build, decisions);
  plan.water = plan_water(build, decisions);
  add_goods(build, decisions, plan);
  plan.ready = plan_ready(build);
  plan.air = air_plan(build);
  plan.heat = heat_plan(build);
  plan.uv = uv_plans(build);
  plan.readings = first_readings(build);
  plan.upkeep = plan_upkeep(build, plan.layers, *plan.air, last_day(build, plan.ready.days));
  plan.lift = plan_lift(build, decisions.empty);
  if (!build.plants.empty()) plan.planting = plan_planting(build, plan.layers, *plan.air);
  plan.order = plan_order(build, plan);
  plan.calendar = plan_calendar(build, plan);
  plan.calendar_before = calendar_before(build, plan);
  plan.cure_days = longest_cure(build);
  add_shopping(build, plan);
  plan.findings = all_findings(build, plan);
  plan.status = status(build, decisions, plan.findings);
  return plan;
}

}  // namespace loamsheet
