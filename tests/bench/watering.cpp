// The water of one tank over so many days, for counting its instructions: watering DAYS. Of the
// air only its ranges are taken, as the plan has them by then.
#include <cstdio>
#include <cstdlib>

#include "plan/air/air.h"
#include "plan/fill/fill.h"
#include "plan/fill/ground.h"

using namespace loamsheet;

namespace {

Bulk bark() {
  Bulk bulk;
  bulk.material = "orchid-bark";
  bulk.dry_density = {{200}, {220}};
  bulk.voids = {0.45};
  bulk.field_capacity = {0.25};
  bulk.moisture_as_placed.range = {{0.10}, {0.15}};
  return bulk;
}

Build misted() {
  Build build;
  build.identity.plant_on = *parse_date("2026-03-07");
  build.enclosure.footprint = rectangle(900_mm, 450_mm);
  build.enclosure.width = 900_mm, build.enclosure.depth = 450_mm, build.enclosure.height = 600_mm;
  build.layers.drainage.kind = "granules";
  build.layers.drainage.bulk = bark();
  build.layers.drainage.depth = 50_mm;
  build.layers.substrate.parts = {{bark(), {1}}};
  build.layers.substrate.front = 60_mm, build.layers.substrate.back = 120_mm;
  Misting mister;
  mister.nozzles = 2;
  mister.flow.range = {{0.09}, {0.09}};
  mister.tank = Litres{10};
  build.misting = mister;
  return build;
}

AirState losing(double litres) {
  AirState state;
  state.lost = {{litres * 0.8}, {litres * 1.2}};
  return state;
}

}  // namespace

int main(int count, char** words) {
  if (count != 2) return 2;
  const Build build = misted();
  const AirPlan air{{losing(0.03), losing(0.02)}, {losing(0.02), losing(0.01)}};
  const auto plan = plan_upkeep(build, plan_layers(build, ground(build)), air, std::atoi(words[1]));
  std::printf("%zu days, %.1f mm standing\n", plan->days.size(), plan->days.back().standing.v);
}
