#include "plan/fill/fill.h"

#include "check/build.h"
#include "plan/fill/first_watering.h"
#include "plan/fill/scenario.h"

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

// The stand carries the tank on the outside of its base: the inside floor and its walls, corners
// left out.
Range<double> stand_load(const Build& build, const Filling& plan) {
  const double walls = plan.footprint_perimeter.v * build.enclosure.walls.thickness.v / 1e6;
  const double base = plan.footprint_area.v + walls;
  return {plan.mass.wet.low.v / base, plan.mass.wet.high.v / base};
}

}  // namespace

Filling plan_filling(const Build& build, const Decisions& decisions) {
  Filling plan;
  plan.footprint_area = area(build.enclosure.footprint);
  plan.footprint_perimeter = perimeter(build.enclosure.footprint);
  plan.layers = decisions.layers;
  plan.mass = plan_mass(build, decisions);
  plan.water = plan_water(build, decisions);
  plan.mass.stand_load = stand_load(build, plan);
  plan.marks = plan_marks(build, plan.layers, plan.water);
  plan.water_area = plan_water_area(build, plan.layers);
  plan.cuts = plan_cuts(build, plan.layers, plan.water_area);
  plan.supports = plan_supports(build, plan.layers);
  plan.doses = plan_doses(build, plan.layers);
  plan.crew = plan_crew(build);
  plan.fixed = plan_fixed(build);
  plan.transport = plan_transport(build, decisions);
  return plan;
}

}  // namespace loamsheet
