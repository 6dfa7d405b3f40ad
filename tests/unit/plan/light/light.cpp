#include <catch2/catch.hpp>

#include "builds.h"
#include "plan/light/light_field.h"
#include "plan/light/shaded.h"
#include "plan/light/uv_field.h"

using namespace loamsheet;
using namespace loamsheet::tests;

namespace {

Opening lid(double open) {
  Opening o;
  o.name = "lid";
  o.at = Opening::Where::top;
  o.mesh = true;
  o.gross = {0.225};
  o.free = {0.225 * open};
  o.over = Box{0, 200, 900, 450};
  return o;
}

Lamp spot(Position at) {
  Lamp lamp;
  lamp.kind = "spot";
  lamp.id = "warm";
  lamp.at = at;
  lamp.beam = 40, lamp.flux = 500, lamp.photons_per_lux = 0.02, lamp.power = 35, lamp.hours = 6;
  return lamp;
}

Lamp uv_bar(Position at) {
  Lamp lamp;
  lamp.kind = "uv-bar";
  lamp.id = "uv";
  lamp.at = at;
  lamp.uv_index = {{200_mm, 2.8}, {300_mm, 1.4}, {450_mm, 0.6}};
  return lamp;
}

Build lit(const Lamp& lamp, double open = 0.45) {
  Build build = box_build();
  build.enclosure.openings.push_back(lid(open));
  build.lamps = {lamp};
  return build;
}

}  // namespace

TEST_CASE("mesh lets its open share of the light through and glass nine tenths") {
  const Position under_mesh{450, 320, 100}, under_glass{450, 100, 100};
  const double open = LightField(lit(spot({450, 320, 600}))).at(under_mesh).ppfd;
  const double meshed = LightField(lit(spot({450, 320, 600.001}))).at(under_mesh).ppfd;
  CHECK(meshed / open == Approx(0.45).epsilon(1e-4));
  const double in = LightField(lit(spot({450, 100, 600}))).at(under_glass).ppfd;
  const double glazed = LightField(lit(spot({450, 100, 600.001}))).at(under_glass).ppfd;
  CHECK(glazed / in == Approx(0.90).epsilon(1e-4));
}

TEST_CASE("a closed wooden top lets no light through") {
  Build build = lit(spot({450, 100, 660}));
  build.enclosure.walls.material = "wood";
  CHECK(LightField(build).at({450, 100, 100}).ppfd == 0);
}

TEST_CASE("a lamp lights nothing at or above its own height") {
  const Build build = lit(spot({450, 320, 400}));
  CHECK(LightField(build).at({450, 320, 400}).ppfd == 0);
  CHECK(LightField(build).at({450, 320, 500}).ppfd == 0);
}

TEST_CASE("each lamp adds to the day's light over its own hours") {
  Build build = lit(spot({450, 320, 500}));
  const LightAt one = LightField(build).at({450, 320, 100});
  build.lamps.push_back(build.lamps[0]);
  build.lamps[1].hours = 12;
  const LightAt both = LightField(build).at({450, 320, 100});
  CHECK(both.ppfd == Approx(2 * one.ppfd));
  CHECK(both.dli == Approx(3 * one.dli));
}

TEST_CASE("light falls with distance and away from the beam") {
  const Build build = lit(spot({450, 320, 660}));
  const double near = LightField(build).at({450, 320, 400}).ppfd;
  CHECK(near > LightField(build).at({450, 320, 100}).ppfd);
  CHECK(near > LightField(build).at({250, 320, 400}).ppfd);
}

TEST_CASE("the UV index follows the lamp's table straight below it inside the tank") {
  const Build build = lit(uv_bar({450, 300, 550}));
  CHECK(UvField(build).at({450, 300, 250}) == Approx(1.4));
  CHECK(UvField(build).at({450, 300, 100}) == Approx(0.6));
  CHECK(UvField(build).at({450, 300, 550 - 244.949}) == Approx(1.97990).epsilon(1e-4));
}

TEST_CASE("beyond its table a lamp's UV falls as the inverse square") {
  const Build build = lit(uv_bar({450, 300, 550}));
  CHECK(UvField(build).at({450, 300, 50}) == Approx(0.6 * 450 * 450 / (500.0 * 500)));
  CHECK(UvField(build).at({450, 300, 450}) == Approx(2.8 * 4));
}

TEST_CASE("mesh passes its open share of UV and glass none") {
  const Build build = lit(uv_bar({450, 300, 660}), 0.5);
  CHECK(UvField(build).at({450, 300, 360}) == Approx(0.7));
  CHECK(UvField(lit(uv_bar({450, 100, 660}))).at({450, 100, 360}) == 0);
}

namespace {

Furnishing board(const std::string& kind, Position at) {
  Furnishing f;
  f.id = kind, f.kind = kind, f.at = at;
  f.width = 200_mm, f.depth = 150_mm, f.height = 20_mm;
  return f;
}

double spot_light(const Build& build, Position at) {
  return LightField(build).at(at).ppfd;
}

}  // namespace

TEST_CASE("under a ledge a tenth of the light is left, and on it and beside it all") {
  Build build = lit(spot({450, 300, 550}));
  const double below = spot_light(build, {450, 300, 150}), on = spot_light(build, {450, 300, 350}),
               beside = spot_light(build, {800, 300, 150});
  build.furnishings = {board("ledge", {450, 300, 350})};
  CHECK(spot_light(build, {450, 300, 150}) == Approx(below / 10));
  CHECK(spot_light(build, {450, 300, 350}) == Approx(on));
  CHECK(spot_light(build, {800, 300, 150}) == Approx(beside));
}

TEST_CASE("a branch shades what lies right below it, not what grows on it") {
  Build build = lit(spot({450, 300, 550}));
  Furnishing branch;
  branch.id = "perch", branch.kind = "branch";
  branch.from = {300, 300, 250}, branch.to = {600, 300, 350}, branch.diameter = 40_mm;
  const double below = spot_light(build, {450, 300, 150}), on = spot_light(build, {450, 300, 320});
  build.furnishings = {branch};
  CHECK(spot_light(build, {450, 300, 150}) == Approx(below / 10));
  CHECK(spot_light(build, {450, 300, 320}) == Approx(on));
}

TEST_CASE("a thing that stands shades from its own height above the ground") {
  Build build = lit(spot({300, 300, 550}));
  Furnishing stone = board("stone", {450, 300, 0});
  stone.height = 100_mm, stone.stands = true;
  const double ground = resting_height(build, {}, {450, 300}).v;
  const Position behind{560, 300, ground + 10};
  const double open = spot_light(build, behind);
  build.furnishings = {stone};
  CHECK(spot_light(build, behind) == Approx(open / 10));
  CHECK(resting_height(build, solids_in(build), {450, 300}).v == Approx(ground + 100));
}

TEST_CASE("a long bar lights past a crown that hides its middle") {
  Lamp bar;
  bar.id = "day", bar.at = {450, 200, 580}, bar.length = 800_mm;
  bar.flux = 4000, bar.photons_per_lux = 0.015, bar.hours = 12;
  const Build build = lit(bar);
  const Crown own{{450, 200, 150}, 30, 30, true}, other{{450, 200, 400}, 60, 60, true};
  const LightField field(build);
  const std::vector<std::optional<Crown>> crowns{own, other};
  const LightAt shaded = shaded_light(field, {{450, 200, 120}, 0, crowns});
  const LightAt open = field.at({450, 200, 120});
  const double middle_ray = light_left(own, other, bar.at);
  CHECK(shaded.ppfd < open.ppfd);
  CHECK(shaded.ppfd > open.ppfd * middle_ray);
  CHECK(shaded.dli / open.dli == Approx(shaded.ppfd / open.ppfd));
}
