#include "plan/fit/at_home.h"

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
  CHECK(at_home(frogs, of(18, 28, 0.6)) == Approx(2 / 3.0));    // no degree to spare at night
  CHECK(at_home(frogs, of(15, 25.5, 0.6)) == Approx(2.5 / 3));  // half of what is wanted by day
  CHECK(at_home(frogs, of(-12, 28, 0.6)) == Approx(2.5 / 3));   // thirty degrees from a winter
  CHECK(at_home(frogs, of(15, 28, 0.4)) == Approx(2.5 / 3));    // 20 of 40 points too damp
  CHECK(at_home(frogs, of(15, 28, 0.95)) == Approx(2.5 / 3));   // 20 of 40 points too dry
  const Build newts = kept({{12}, {20}}, {{8}, {16}}, {{0.6}, {0.9}});
  CHECK(at_home(newts, of(-12, 24, 0.6)) > at_home(newts, of(8, 28, 0.6)));
}

TEST_CASE("ground that is too wet or too dry for a plant's roots is no home, but for a mount") {
  Build build = kept({{22}, {26}}, {{18}, {22}}, {{0.6}, {0.9}});
  build.choosing.climate.ground = {{"dry", {{"dry", 1}, {"wet", 0}}},
                                   {"between", {{"dry", 0.4}, {"wet", 0.2}}},
                                   {"damp", {{"dry", 0}, {"wet", 1}}}};
  Plant arid = of(15, 28, 0.6);
  arid.moisture = known<std::string>("dry");
  CHECK(at_home(build, arid) == Approx(2 / 3.0));
  arid.mountable = known(true), arid.habit = known<std::string>("orchid");
  CHECK(at_home(build, arid) == Approx(1));
  arid.mountable = known(false);
  build.kind = BuildKind::arid;
  CHECK(at_home(build, arid) == Approx(1));
  build.kind = BuildKind::temperate;
  CHECK(at_home(build, arid) == Approx(2 / 3.0));  // by the animal's air
  build.kept[0].facts.humidity = known(Range<Fraction>{{0.5}, {0.6}});
  arid.humidity = known(Fraction{0.5});
  CHECK(at_home(build, arid) == Approx(2.4 / 3));
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
  CHECK(at_home(build, of(15, 28, 0.6)) == Approx(2 / 3.0));
}

TEST_CASE("damp air over dry ground is no worse to a plant of dry places than its own") {
  Build build = kept({{22}, {26}}, {{18}, {22}}, {{0.5}, {0.6}});
  CHECK(at_home(build, of(15, 28, 0.2)) < 1);
  build.kind = BuildKind::arid;
  CHECK(at_home(build, of(15, 28, 0.2)) == Approx(1));
  CHECK(at_home(build, of(15, 28, 0.75)) < 1);
}
