#include "plan/plan.h"

#include <algorithm>
#include <cmath>

#include "laws.h"
#include "plan/air/water_days.h"
#include "plan/fill/fill.h"
#include "plan/fill/first_watering.h"
#include "plan/fill/ground.h"
#include "plan/fill/scenario.h"

using namespace loamsheet;
using namespace loamsheet::tests;

namespace {

bool same(double a, double b) {
  return std::fabs(a - b) <= 1e-9 * std::max({1.0, std::fabs(a), std::fabs(b)});
}

// Whether `inner` lies within `outer`, up to rounding.
bool within(const Range<double>& inner, const Range<double>& outer) {
  const double slack = 1e-9 * std::max({1.0, std::fabs(outer.low), std::fabs(outer.high)});
  return inner.low >= outer.low - slack && inner.high <= outer.high + slack;
}

constexpr double (*readings[])(const Result&) = {[](const Result& r) { return r.first_watering.v; },
                                                 [](const Result& r) { return r.standing.v; },
                                                 [](const Result& r) { return r.dry.v; },
                                                 [](const Result& r) { return r.wet.v; }};

double place() {
  return drawn(0, 1000) / 1000.0;
}

Scenario drawn_scenario(const Build& build) {
  Scenario scenario;
  for (size_t i = 0; i < build.unknowns.size(); ++i) scenario.at.push_back(place());
  scenario.density = place(), scenario.moisture = place();
  return scenario;
}

Misting drawn_misting() {
  Misting mister;
  mister.by_hand = drawn(0, 1) == 1;
  mister.nozzles = drawn(1, 6);
  mister.flow.range = {{0.06}, {drawn(60, 200) / 1000.0}};
  mister.pull.range = {{0.0005}, {drawn(5, 20) / 10000.0}};
  if (drawn(0, 1) == 1) mister.tank = Litres{drawn(1, 60) * 0.5};
  return mister;
}

AirState drawn_air_state() {
  AirState state;
  state.lost.low = {drawn(0, 60) / 1000.0};
  state.lost.high = state.lost.low + Litres{drawn(0, 60) / 1000.0};
  return state;
}

AirPlan drawn_air() {
  return {{drawn_air_state(), drawn_air_state()}, {drawn_air_state(), drawn_air_state()}};
}

// The same build with its unknowns listed the other way round.
Build turned_round(Build build) {
  const int last = static_cast<int>(build.unknowns.size()) - 1;
  std::reverse(build.unknowns.begin(), build.unknowns.end());
  for (SubstratePart& part : build.layers.substrate.parts) {
    int& unknown = part.bulk.moisture_as_placed.unknown;
    if (unknown >= 0) unknown = last - unknown;
  }
  return build;
}

}  // namespace

TEST_CASE("the parts of a mix sum to the mix") {
  holds("parts", [] {
    const SubstratePlan plan = make_plan(drawn_build()).layers.substrate;
    Litres amount{}, buy{};
    Range<Kilograms> dry{};
    for (const PartPlan& part : plan.parts) {
      amount += part.volume, buy += part.buy;
      dry.low += part.dry.low, dry.high += part.dry.high;
    }
    RC_ASSERT(same(amount.v, plan.volume.v));
    RC_ASSERT(same(buy.v, plan.buy.v));
    RC_ASSERT(same(dry.low.v, plan.dry.low.v));
    RC_ASSERT(same(dry.high.v, plan.dry.high.v));
  });
}

TEST_CASE("a deeper layer has more volume and weighs more") {
  holds("depth", [] {
    Build build = drawn_build();
    const Plan before = make_plan(build);
    build.layers.substrate.back += Millimetres{static_cast<double>(drawn(1, 50))};
    const Plan after = make_plan(build);
    RC_ASSERT(after.layers.substrate.volume > before.layers.substrate.volume);
    RC_ASSERT(after.layers.substrate.buy > before.layers.substrate.buy);
    RC_ASSERT(after.mass.dry.low > before.mass.dry.low);
    RC_ASSERT(after.mass.wet.high > before.mass.wet.high);
  });
}

TEST_CASE("a deeper drainage layer lifts the others and changes no other volume") {
  holds("drainage depth", [] {
    Build build = drawn_build();
    const LayersPlan before = make_plan(build).layers;
    build.layers.drainage.depth += 10_mm;
    const LayersPlan after = make_plan(build).layers;
    RC_ASSERT(same(after.substrate.volume.v, before.substrate.volume.v));
    if (before.drainage) {
      RC_ASSERT(after.drainage->volume > before.drainage->volume);
      RC_ASSERT(same(after.profile.litter_back.v, before.profile.litter_back.v + 10));
    }
  });
}

TEST_CASE("the floor is shared out whole between land, water and background") {
  holds("shares of the floor", [] {
    const Build build = drawn_build();
    const Ground parts = ground(build);
    const double strip =
        build.enclosure.background
            ? background_length(build.enclosure).v * build.enclosure.background->thickness.v / 1e6
            : 0;
    RC_ASSERT(
        same(area(parts.land).v + area(parts.water).v + strip, area(build.enclosure.footprint).v));
    if (build.water_area && !build.enclosure.background) {
      RC_ASSERT(
          same(area(parts.water).v, area(build.enclosure.footprint).v * build.water_area->floor.v));
    }
  });
}

TEST_CASE("a wet tank is never lighter than a dry one, a range never upside down") {
  holds("masses", [] {
    const Plan plan = make_plan(with_drawn_unknowns(drawn_build()));
    RC_ASSERT(plan.mass.dry.low <= plan.mass.dry.high);
    RC_ASSERT(plan.mass.wet.low <= plan.mass.wet.high);
    RC_ASSERT(plan.mass.wet.low >= plan.mass.dry.low);
    RC_ASSERT(plan.mass.dry.low >= plan.mass.empty);
  });
}

TEST_CASE("widening an unknown never narrows a printed range") {
  holds("widening", [] {
    const Build narrow = with_drawn_unknowns(drawn_build());
    Build wide = narrow;
    auto& range = wide.layers.substrate.parts[0].bulk.moisture_as_placed.range;
    range.low.v *= 0.5;
    range.high.v = std::min(1.0, range.high.v + 0.1);
    for (const auto read : readings) {
      RC_ASSERT(within(sweep(narrow, decide(narrow), read), sweep(wide, decide(wide), read)));
    }
  });
}

TEST_CASE("any scenario's numbers lie within the printed ranges") {
  holds("scenarios inside", [] {
    const Build build = with_drawn_unknowns(drawn_build());
    const Decisions decisions = decide(build);
    const Result result = evaluate(build, decisions, drawn_scenario(build));
    for (const auto read : readings) {
      RC_ASSERT(within({read(result), read(result)}, sweep(build, decisions, read)));
    }
  });
}

TEST_CASE("the order of the unknowns changes no number") {
  holds("order", [] {
    const Build build = with_drawn_unknowns(drawn_build());
    const Build turned = turned_round(build);
    for (const auto read : readings) {
      const auto one = sweep(build, decide(build), read),
                 other = sweep(turned, decide(turned), read);
      RC_ASSERT(within(one, other));
      RC_ASSERT(within(other, one));
    }
  });
}

TEST_CASE("a wetter substrate needs less water and stands lower") {
  holds("moisture", [] {
    const Build build = with_drawn_unknowns(drawn_build());
    const Decisions decisions = decide(build);
    Scenario scenario = drawn_scenario(build);
    scenario.at[0] = 0;
    const Result dry = evaluate(build, decisions, scenario);
    scenario.at[0] = 1;
    const Result wet = evaluate(build, decisions, scenario);
    RC_ASSERT(wet.first_watering <= dry.first_watering);
    RC_ASSERT(wet.standing <= dry.standing);
  });
}

TEST_CASE("an exact number does not depend on an unknown") {
  holds("status", [] {
    const Build build = with_drawn_unknowns(drawn_build());
    const Plan plan = make_plan(build);
    const bool stopped = std::any_of(plan.findings.begin(), plan.findings.end(),
                                     [](const Finding& f) { return f.weight == Weight::stop; });
    RC_ASSERT((plan.status == Status::not_cleared) == stopped);
    if (plan.status == Status::cleared && plan.water.first_watering) {
      RC_ASSERT(same(plan.water.first_watering->low.v, plan.water.first_watering->high.v));
    }
  });
}

TEST_CASE("the same build gives the same plan") {
  holds("determinism", [] {
    const Build build = with_drawn_unknowns(drawn_build());
    RC_ASSERT(dump(build, make_plan(build)) == dump(build, make_plan(build)));
  });
}

TEST_CASE("each day's water goes in, out or into store, to a millilitre") {
  holds("water balance", [] {
    Build build = drawn_build();
    build.misting = drawn_misting();
    const AirPlan air = drawn_air();
    const LayersPlan layers = plan_layers(build, ground(build));
    const auto plan = plan_upkeep(build, layers, air, drawn(0, 90));
    double stored = plan->placed.v;
    for (const WaterDay& day : plan->days) {
      const double in = (day.watered + day.mist).v, out = (day.lost + day.drained).v;
      RC_ASSERT(std::fabs(in - out - (day.stored.v - stored)) < 1e-3);
      RC_ASSERT(day.mist.v >= 0);
      RC_ASSERT(day.lost.v >= 0);
      RC_ASSERT(day.drained.v >= 0);
      RC_ASSERT(day.stored.v >= -1e-12);
      stored = day.stored.v;
    }
  });
}

TEST_CASE("misting alone never lifts the standing water past its limits") {
  holds("standing water", [] {
    Build build = drawn_build();
    build.misting = drawn_misting();
    const LayersPlan layers = plan_layers(build, ground(build));
    const auto plan = plan_upkeep(build, layers, drawn_air(), 60);
    if (!layers.drainage || layers.drainage->voids.v <= 0) return;
    const Millimetres limit = std::min(25_mm, *highest_standing(build));
    for (size_t i = 1; i < plan->days.size(); ++i) {
      const Millimetres before = plan->days[i - 1].standing, after = plan->days[i].standing;
      RC_ASSERT(after.v <= std::max(before.v, limit.v) + 1e-6);
    }
  });
}
