#include "plan/at_home.h"

#include <catch2/catch.hpp>

#include "living.h"

using namespace loamsheet;
using namespace loamsheet::tests;

namespace {

Build kept(Range<Celsius> day, Range<Celsius> night, Range<Fraction> humidity) {
  Build build = box_build();
  build.kept.push_back(animal("animal", "insectivore"));
  Animal& facts = build.kept[0].facts;
  facts.day = known(day), facts.night = known(night), facts.humidity = known(humidity);
  return build;
}

Plant of(double coldest, double warmest, double humidity) {
  Plant it = plant("it", "fern");
  it.coldest = known(Celsius{coldest}), it.warmest = known(Celsius{warmest});
  it.humidity = known(Fraction{humidity});
  return it;
}

}  // namespace

TEST_CASE("a plant is at home where neither cold, heat, damp nor the want of a winter tells") {
  const Build frogs = kept({{22}, {26}}, {{18}, {22}}, {{0.6}, {0.9}});
  CHECK(at_home(frogs, of(15, 28, 0.6)) == Approx(1));
  CHECK(at_home(frogs, of(18, 28, 0.6)) == Approx(0.5));     // no degree to spare at night
  CHECK(at_home(frogs, of(15, 25.5, 0.6)) == Approx(0.75));  // half of what is wanted by day
  CHECK(at_home(frogs, of(-12, 28, 0.6)) == Approx(0.75));   // thirty degrees from a winter
  CHECK(at_home(frogs, of(15, 28, 0.4)) == Approx(0.75));    // 20 of 40 points too damp
  const Build newts = kept({{12}, {20}}, {{8}, {16}}, {{0.6}, {0.9}});
  CHECK(at_home(newts, of(-12, 24, 0.6)) > at_home(newts, of(8, 28, 0.6)));
}

TEST_CASE("what nobody knows speaks neither for a plant nor against it") {
  Build build = kept({{22}, {26}}, {{18}, {22}}, {{0.6}, {0.9}});
  Plant unknown = of(15, 28, 0.6);
  unknown.coldest.reset(), unknown.warmest.reset(), unknown.humidity.reset();
  CHECK(at_home(build, unknown) == Approx(1));
  build.kept.clear();
  CHECK(at_home(build, of(40, 41, 1)) == Approx(1));
}

TEST_CASE("of several animals the one that a plant is least at home with counts") {
  Build build = kept({{22}, {26}}, {{18}, {22}}, {{0.6}, {0.9}});
  build.kept.push_back(build.kept[0]);
  build.kept[1].facts.night = known(Range<Celsius>{{12}, {14}});
  CHECK(at_home(build, of(15, 28, 0.6)) == Approx(0.5));
}
