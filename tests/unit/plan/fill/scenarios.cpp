#include <algorithm>
#include <catch2/catch.hpp>
#include <cmath>

#include "builds.h"
#include "plan/fill/scenario.h"

using namespace loamsheet;
using namespace loamsheet::tests;

namespace {

Build with_unknowns(int count) {
  Build build = box_build();
  for (int i = 0; i < count; ++i) build.unknowns.push_back({"key", {}, "catalogue", "a–b"});
  return build;
}

bool holds(const std::vector<Scenario>& all, const Scenario& wanted) {
  return std::any_of(all.begin(), all.end(), [&](const Scenario& s) {
    return s.at == wanted.at && s.density == wanted.density && s.moisture == wanted.moisture;
  });
}

}  // namespace

TEST_CASE("up to eight unknowns every corner is looked at") {
  const auto all = scenarios(with_unknowns(3));
  CHECK(all.size() == 32 + 16);
  for (int corner = 0; corner < 32; ++corner) {
    const auto bit = [&](int k) { return static_cast<double>(corner >> k & 1); };
    CHECK(holds(all, {{bit(0), bit(1), bit(2)}, bit(3), bit(4)}));
  }
}

TEST_CASE("with more unknowns each is looked at alone and all as one") {
  const auto all = scenarios(with_unknowns(9));
  CHECK(all.size() == 8 + 2 * 11 + 16);
  std::vector<double> alone(9, 0.5);
  alone[4] = 1;
  CHECK(holds(all, {alone, 0.5, 0.5}));
  CHECK(holds(all, {std::vector<double>(9, 1.0), 0, 1}));
}

TEST_CASE("samples lie inside and are all different") {
  const auto all = scenarios(with_unknowns(2));
  REQUIRE(all.size() == 16 + 16);
  for (size_t i = 16; i < all.size(); ++i) {
    for (double at : {all[i].at[0], all[i].at[1], all[i].density, all[i].moisture}) {
      CHECK(at > 0);
      CHECK(at < 1);
    }
    for (size_t j = 16; j < i; ++j) CHECK(all[i].at != all[j].at);
  }
}

TEST_CASE("a sweep gives the ends that an unknown leads to") {
  const Build build = with_unknown_moisture(box_build(), 0.05, 0.25);
  const auto range =
      sweep(build, decide(build), [](const Result& r) { return r.first_watering.v; });
  const double rest = 26.325 * 0.25 * 0.10;  // the other part's deficit
  CHECK(range.low == Approx(rest * 1.1));
  CHECK(range.high == Approx((rest + 26.325 * 0.75 * 0.20) * 1.1));
}

TEST_CASE("the catalogue's own ranges are swept too") {
  Build build = box_build();
  build.layers.drainage.bulk.dry_density = {{600}, {740}};
  build.layers.substrate.parts[0].bulk.moisture_as_placed.range = {{0.10}, {0.20}};
  const Decisions decisions = decide(build);
  const auto dry = sweep(build, decisions, [](const Result& r) { return r.dry.v; });
  CHECK(dry.high - dry.low == Approx(20.25 * 0.14));
  const auto water = sweep(build, decisions, [](const Result& r) { return r.first_watering.v; });
  CHECK(water.high - water.low == Approx(26.325 * 0.75 * 0.10 * 1.1));
}

TEST_CASE("what is known gives one number") {
  const Build build = box_build();
  const auto range = sweep(build, decide(build), [](const Result& r) { return r.wet.v; });
  CHECK(range.exact());
}

TEST_CASE("an unknown matters when a number moves with it") {
  const Build build = with_unknown_moisture(box_build(), 0.05, 0.25);
  CHECK(matters(build, decide(build), 0));
}

TEST_CASE("an unknown that moves nothing does not matter") {
  const Build wet = with_unknown_moisture(box_build(), 0.30, 0.60);  // above field capacity
  CHECK_FALSE(matters(wet, decide(wet), 0));
  Build arid = with_unknown_moisture(box_build(), 0.05, 0.25);
  arid.kind = BuildKind::arid;
  CHECK_FALSE(matters(arid, decide(arid), 0));
}
