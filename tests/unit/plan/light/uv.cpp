// UV where an animal meets it, and what is said of it.
#include <catch2/catch.hpp>

#include "builds.h"
#include "plan/light/uv_exposure.h"
#include "plan/plan.h"

using namespace loamsheet;
using namespace loamsheet::tests;

namespace {

// A tank with mesh over its back, a UV bar over that, and one animal of a zone.
Build basking(double zone, double times = 1) {
  Build build = box_build();
  Opening lid = opening("lid", Opening::Where::top, 0_mm);
  lid.lower_edge.reset();
  lid.mesh = true, lid.gross = {0.225}, lid.free = {0.1125}, lid.over = Box{0, 200, 900, 450};
  build.enclosure.openings = {lid};
  Lamp lamp;
  lamp.kind = "uv-bar", lamp.id = "uv", lamp.at = {450, 300, 660};
  lamp.uv_index = {{200_mm, 2.8 * times}, {300_mm, 1.4 * times}, {450_mm, 0.6 * times}};
  build.lamps = {lamp};
  KeptAnimal animal;
  animal.facts.name = "skink";
  animal.facts.uv_zone = Fact<Range<double>>{{zone, zone}, {"from memory"}};
  build.kept = {animal};
  return build;
}

Furnishing spot_at(Position at) {
  Furnishing spot;
  spot.id = "rock", spot.kind = "basking-spot", spot.at = at;
  return spot;
}

const Finding* found(const Plan& plan, const std::string& rule) {
  for (const Finding& f : plan.findings) {
    if (f.rule == rule) return &f;
  }
  return nullptr;
}

std::string change(const Finding& f) {
  for (const auto& [slot, value] : f.args) {
    if (slot == "change") return std::get<std::string>(value);
  }
  return "";
}

}  // namespace

TEST_CASE("the basking place is the basking spot, the animal's back above it") {
  Build build = basking(2);
  build.furnishings = {spot_at({300, 300, 250})};
  const UvPlan uv = uv_plans(build).at(0);
  CHECK(uv.back.x == 300);
  CHECK(uv.back.z == 300);
  CHECK(uv.basking == Approx(UvField(build).at({300, 300, 300})));
  CHECK(uv.gradient.low < uv.basking);
  CHECK(uv.gradient.high >= uv.basking);
}

TEST_CASE("without one it is whatever lies right under the UV lamp") {
  Build build = basking(2);
  Furnishing stone;
  stone.id = "slab", stone.kind = "stone", stone.stands = true;
  stone.at = {450, 300, 0}, stone.width = stone.depth = 150_mm, stone.height = 80_mm;
  const double ground = uv_plans(build).at(0).back.z;
  build.furnishings = {stone};
  CHECK(uv_plans(build).at(0).back.z == Approx(ground + 80));
}

TEST_CASE("a furnishing keeps UV off, whole") {
  Build build = basking(2);
  Furnishing ledge;
  ledge.id = "shelf", ledge.kind = "ledge", ledge.at = {450, 300, 400};
  ledge.width = 200_mm, ledge.depth = 100_mm, ledge.height = 20_mm;
  CHECK(UvField(build).at({450, 300, 200}) > 0);
  build.furnishings = {ledge};
  CHECK(UvField(build).at({450, 300, 200}) == 0);
}

TEST_CASE("too strong UV is lifted away, by as little as does it") {
  const Plan plan = make_plan(basking(1, 12));
  const Finding* f = found(plan, "uv-too-strong");
  REQUIRE(f);
  CHECK(f->weight == Weight::caution);
  CHECK(change(*f) == "hang-higher");
}

TEST_CASE("an extreme index is a stop") {
  const Plan plan = make_plan(basking(4, 60));
  REQUIRE(found(plan, "uv-too-strong"));
  CHECK(found(plan, "uv-too-strong")->weight == Weight::stop);
}

TEST_CASE("too weak UV under glass wants the lamp over the mesh") {
  Build build = basking(2, 6);
  build.lamps[0].at.y = 100;
  const Plan plan = make_plan(build);
  const Finding* f = found(plan, "uv-too-weak");
  REQUIRE(f);
  CHECK(change(*f) == "move-back");
}

TEST_CASE("a lamp without a table is a caution and never a guess") {
  Build build = basking(3);
  build.lamps[0].uv_index.clear();
  const Plan plan = make_plan(build);
  CHECK(found(plan, "lamp-without-table"));
  CHECK_FALSE(found(plan, "uv-too-weak"));
}

TEST_CASE("zones 3 and 4 want a meter reading, 1 and 2 do not") {
  for (const int zone : {1, 2, 3, 4}) {
    CAPTURE(zone);
    CHECK((found(make_plan(basking(zone)), "uv-meter-reading") != nullptr) == (zone >= 3));
  }
}

TEST_CASE("without a lamp no light is known, and that is said once") {
  Build build = basking(1);
  build.lamps.clear();
  PlantUse plant;
  plant.number = 1, plant.facts.id = plant.facts.name = "fern", plant.ppfd = {10, 50};
  build.plants = {plant};
  const Plan plan = make_plan(build);
  CHECK(found(plan, "light-not-known"));
  CHECK_FALSE(found(plan, "plants-too-dark"));
}
