#include "plan/place/search.h"

#include <algorithm>
#include <catch2/catch.hpp>
#include <cmath>

#include "living.h"
#include "plan/fill/fill.h"
#include "plan/fill/ground.h"
#include "plan/place/dump_places.h"
#include "plan/place/soft_rules.h"

using namespace loamsheet;
using namespace loamsheet::tests;

namespace {

LayersPlan layers_of(const Build& build) {
  return plan_layers(build, ground(build));
}

// Bright above, dim below; damp below, dry above; the same in every build.
std::vector<Site> sites_of(const Build& build) {
  std::vector<Site> sites = bare_sites(build, layers_of(build));
  for (Site& site : sites) {
    site.light.ppfd = 30 + 270 * site.up;
    site.humidity = {{0.85 - 0.3 * site.up}, {0.95 - 0.3 * site.up}};
  }
  return sites;
}

Site chosen_for(const Build& build, size_t index = 0) {
  const std::vector<Site> sites = sites_of(build);
  std::vector<ToPlace> plants;
  for (const PlantUse& use : build.plants) {
    plants.push_back({needs_of(use, build.enclosure), use.on, std::nullopt});
  }
  const Placement placed = place(plants, sites);
  REQUIRE(placed.chosen[index]);
  return sites[placed.chosen[index]->site];
}

Build furnished() {
  Build build = box_build();
  build.enclosure.background = Background{"cork-bark", 30_mm};
  build.furnishings = {branch("perch", {100, 350, 180}, {750, 250, 450}),
                       ledge("shelf", {600, 370, 350}, 1_L), bowl({750, 200, 0})};
  return build;
}

// One plant in a row of `count` sites that are `gap` apart, each better by its own light.
std::vector<Site> row(int count, double gap) {
  std::vector<Site> sites(static_cast<size_t>(count));
  for (int i = 0; i < count; ++i) {
    Site& site = sites[static_cast<size_t>(i)];
    site.at = {gap * i, 100, 50};
    site.root = 60_mm, site.headroom = 400_mm, site.wall = 100_mm;
    site.humidity = {{0.8}, {0.8}};
    site.light.ppfd = 100;
  }
  return sites;
}

ToPlace placeable(Range<double> ppfd, Millimetres spread) {
  ToPlace plant;
  plant.needs.height = {100_mm, 150_mm};
  plant.needs.spread = spread, plant.needs.root = 40_mm;
  plant.needs.ppfd = ppfd;
  return plant;
}

}  // namespace

TEST_CASE("sites lie on the ground, in pockets, on branches and on the background") {
  const Build build = furnished();
  int floor = 0, pocket = 0, perch = 0, background = 0;
  for (const Site& site : sites_of(build)) {
    floor += site.kind == SiteKind::floor;
    pocket += site.kind == SiteKind::pocket && site.on == "shelf";
    perch += site.on == "perch";
    background += site.on == "background";
  }
  CHECK(floor > 300);
  CHECK(pocket == 5);
  CHECK(perch == 14);
  CHECK(background > 100);
}

TEST_CASE("the ground's sites stand on the substrate at their depth") {
  const Build build = box_build();
  for (const Site& site : sites_of(build)) {
    const double depth = 50 + 30 * site.at.y / 450;
    CHECK(site.root.v == Approx(depth));
    CHECK(site.at.z == Approx(50 + depth));
    CHECK(site.headroom.v == Approx(550 - depth));
  }
}

TEST_CASE("a pocket is as deep as its volume over its floor") {
  const Build build = furnished();
  int pockets = 0;
  for (const Site& site : sites_of(build)) {
    if (site.kind != SiteKind::pocket) continue;
    CHECK(site.root.v == Approx(40));
    ++pockets;
  }
  CHECK(pockets > 0);
}

TEST_CASE("bowls, mouths of hides and the swing of doors stay free") {
  Build build = box_build();
  build.enclosure.openings[0].kind = "door";
  Furnishing hide;
  hide.id = "hide", hide.kind = "hide", hide.at = {300, 300, 0};
  hide.width = 150_mm, hide.depth = 100_mm;
  build.furnishings = {bowl({700, 200, 0}), hide};
  CHECK(kept_free(build, {700, 200}));
  CHECK(kept_free(build, {779, 200}));
  CHECK_FALSE(kept_free(build, {781, 200}));
  CHECK(kept_free(build, {300, 175}));
  CHECK_FALSE(kept_free(build, {300, 165}));
  CHECK_FALSE(kept_free(build, {300, 375}));
  CHECK(kept_free(build, {500, 49}));
  CHECK_FALSE(kept_free(build, {500, 51}));
  build.furnishings[1].turned = 180;
  CHECK(kept_free(build, {300, 425}));
  CHECK_FALSE(kept_free(build, {300, 225}));
}

TEST_CASE("trailers go high, creepers low, epiphytes off the ground") {
  Build build = furnished();
  add(build, plant("trailer", "trailer"));
  add(build, plant("creeper", "ground-cover"));
  Plant orchid = plant("orchid", "epiphyte");
  orchid.mountable = known(true);
  add(build, orchid);
  CHECK(chosen_for(build, 0).kind == SiteKind::pocket);
  CHECK(chosen_for(build, 1).kind == SiteKind::floor);
  CHECK(chosen_for(build, 1).back < 0.5);
  CHECK(chosen_for(build, 2).kind != SiteKind::floor);
}

TEST_CASE("bright sites go to plants of bright places, shade and damp to those of shade") {
  Build build = furnished();
  Plant sun = plant("sun", "epiphyte"), shade = plant("shade", "epiphyte");
  sun.mountable = shade.mountable = known(true);
  sun.humidity = known(Fraction{0.4}), shade.humidity = known(Fraction{0.85});
  add(build, sun);
  add(build, shade);
  build.plants[0].ppfd = {200, 1000};
  build.plants[1].ppfd = {10, 100};
  const Site high = chosen_for(build, 0), low = chosen_for(build, 1);
  CHECK(high.at.z > low.at.z);
  CHECK(high.light.ppfd >= 200);
  CHECK(low.light.ppfd <= 200);
}

TEST_CASE("tall plants stand at the back or the sides, climbers at a wall") {
  Build build = box_build();
  Plant tall = plant("tall", "upright");
  tall.height = known(Range<Millimetres>{300_mm, 400_mm});
  add(build, tall);
  add(build, plant("climber", "climber"));
  const Site site = chosen_for(build, 0);
  CHECK(std::max(site.back, std::abs(2 * site.across - 1)) > 0.7);
  CHECK(chosen_for(build, 1).support <= 75_mm);
}

TEST_CASE("what cannot fit is not placed, and scores nothing") {
  for (const int broken : {0, 1, 2}) {
    auto sites = row(3, 100);
    for (Site& site : sites) {
      if (broken == 0) site.root = 39_mm;
      if (broken == 1) site.headroom = 99_mm;
      if (broken == 2) site.kind = SiteKind::mount;
    }
    const Placement placed = place({placeable({50, 200}, 50_mm)}, sites);
    CHECK_FALSE(placed.chosen[0]);
    CHECK(placed.score == 0);
    CHECK(placed.bound == 0);
  }
}

TEST_CASE("neighbours keep half of both spreads apart, ground covers less") {
  Needs a, b;
  a.spread = 100_mm, b.spread = 200_mm;
  CHECK(distance_kept(a, b) == 150_mm);
  b.habit = Habit::creeper;
  CHECK(distance_kept(a, b).v == Approx(105));
}

TEST_CASE("a plant gives way when both together gain") {
  auto sites = row(2, 300);
  sites[1].light.ppfd = 10;  // too dim for the first, half as good for the second
  const ToPlace dim = placeable({5, 100}, 100_mm), bright = placeable({100, 200}, 100_mm);
  const Placement placed = place({dim, bright}, sites);
  CHECK(placed.chosen[0]->site == 1);
  CHECK(placed.chosen[1]->site == 0);
  CHECK(placed.score == placed.bound);
}

TEST_CASE("light outside its band counts by its ratio to the band") {
  Needs needs;
  needs.ppfd = {50, 200};
  Site site;
  for (const auto& [ppfd, fit] : {std::pair{50.0, 1.0},
                                  {200.0, 1.0},
                                  {25.0, 0.5},
                                  {400.0, 0.5},
                                  {12.5, 0.0},
                                  {0.0, 0.0},
                                  {1000.0, 0.0}}) {
    site.light.ppfd = ppfd;
    CHECK(light_fit(needs, site) == Approx(fit).margin(1e-9));
  }
}

TEST_CASE("a pinned plant stays, and is told what it breaks") {
  Build build = furnished();
  for (int i = 0; i < 3; ++i) add(build, plant("pinned", "fern"));
  build.plants[0].pinned = Point{300, 200};
  build.plants[1].pinned = Point{330, 200};
  build.plants[2].pinned = Point{750, 200};
  const PlantingPlan plan = plan_planting(build, layers_of(build), air_plan(build));
  CHECK(plan.plants[0].at.x == 300);
  CHECK(plan.plants[1].at.x == 330);
  CHECK(plan.plants[0].broken == std::vector<std::string>{"distance"});
  CHECK(plan.plants[2].broken == std::vector<std::string>{"keep-out"});
}

TEST_CASE("a plant goes on what it is to grow on") {
  Build build = furnished();
  Plant fern = plant("fern", "fern");
  fern.mountable = known(true);
  add(build, fern, 3);
  build.plants[0].on = "shelf", build.plants[1].on = "perch", build.plants[2].on = "background";
  build.plants[2].pinned = Point{200, 420};
  build.plants[2].pinned_height = 300_mm;
  const PlantingPlan plan = plan_planting(build, layers_of(build), air_plan(build));
  CHECK(plan.plants[0].on == "shelf");
  CHECK(plan.plants[1].on == "perch");
  CHECK(plan.plants[2].on == "background");
  CHECK(std::abs(plan.plants[2].at.z - 300) <= 25);
}
