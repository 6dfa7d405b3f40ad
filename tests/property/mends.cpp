// The change of a lamp that a finding names mends it: the plan made anew with that change has the
// finding no more.
#include <algorithm>

#include "laws.h"
#include "plan/plan.h"

using namespace loamsheet;
using namespace loamsheet::tests;

namespace {

Enclosure meshed_tank() {
  Enclosure tank;
  tank.width = 900_mm, tank.depth = 450_mm, tank.height = 600_mm, tank.sill = 600_mm;
  tank.footprint = rectangle(tank.width, tank.depth);
  tank.walls.material = "glass", tank.walls.thickness = 5_mm, tank.walls.density = {2500};
  Opening lid;
  lid.name = "lid", lid.mesh = true, lid.over = Box{0, 200, 900, 450};
  lid.gross = {0.225}, lid.free = {0.225 * drawn(30, 80) / 100};
  tank.openings = {lid};
  return tank;
}

Build drawn_tank() {
  Build build = drawn_build();
  build.enclosure = meshed_tank();
  build.water_area.reset();
  build.layers.substrate.front = build.layers.substrate.back = 60_mm;
  return build;
}

Position over_the_tank() {
  return {double(drawn(300, 600)), double(drawn(80, 400)), double(drawn(605, 900))};
}

Lamp drawn_uv_lamp() {
  Lamp lamp;
  lamp.kind = "uv-bar", lamp.id = "uv", lamp.at = over_the_tank();
  lamp.length = 300_mm, lamp.hours = 10;
  const double near = drawn(2, 300) / 10.0;
  lamp.uv_index = {{200_mm, near}, {300_mm, near / 2}, {450_mm, near / 5}};
  return lamp;
}

KeptAnimal drawn_basker() {
  KeptAnimal animal;
  animal.facts.id = animal.facts.name = "basker";
  const double zone = drawn(1, 4);
  animal.facts.uv_zone = Fact<Range<double>>{{zone, zone}, {"from memory"}};
  return animal;
}

Lamp drawn_day_lamp(const std::string& id) {
  Lamp lamp;
  lamp.id = id, lamp.at = over_the_tank();
  lamp.length = 600_mm, lamp.hours = drawn(8, 16), lamp.flux = drawn(500, 20000);
  lamp.photons_per_lux = 0.015;
  return lamp;
}

PlantUse pinned_plant(int number) {
  PlantUse plant;
  plant.number = number, plant.facts.id = plant.facts.name = "plant";
  plant.pinned = Point{200.0 * number, double(drawn(100, 350))};
  plant.ppfd.low = drawn(10, 150), plant.ppfd.high = plant.ppfd.low * 5;
  return plant;
}

template <class T>
const T* arg(const Finding& finding, const std::string& slot) {
  for (const auto& [name, value] : finding.args) {
    if (name == slot) return std::get_if<T>(&value);
  }
  return nullptr;
}

// The lamp as the finding's remedy says: its place, hours and strength.
bool change_as_told(Build& build, const Finding& finding) {
  const auto* change = arg<std::string>(finding, "change");
  if (!change || change->starts_with("none-")) return false;
  const std::string& id = *arg<std::string>(finding, "lamp");
  Lamp& lamp = *std::find_if(build.lamps.begin(), build.lamps.end(),
                             [&](const Lamp& l) { return l.id == id; });
  lamp.hours = *arg<double>(finding, "hours");
  lamp.at = {arg<Millimetres>(finding, "x")->v, arg<Millimetres>(finding, "y")->v,
             arg<Millimetres>(finding, "z")->v};
  if (!change->starts_with("get-")) return true;
  lamp.flux *= *arg<double>(finding, "times");
  for (auto& row : lamp.uv_index) row.second *= *arg<double>(finding, "times");
  return true;
}

bool has(const Plan& plan, const Finding& wanted) {
  return std::any_of(plan.findings.begin(), plan.findings.end(), [&](const Finding& f) {
    const auto *was = arg<std::string>(wanted, "plants"), *is = arg<std::string>(f, "plants");
    return f.rule == wanted.rule && (!was || !is || *was == *is);
  });
}

// How many findings of these rules were mended by what they say.
int mended(const Build& build, const std::string& rules) {
  int count = 0;
  for (const Finding& finding : make_plan(build).findings) {
    Build changed = build;
    if (!finding.rule.starts_with(rules) || !change_as_told(changed, finding)) continue;
    RC_ASSERT(!has(make_plan(changed), finding));
    ++count;
  }
  return count;
}

}  // namespace

TEST_CASE("the change that a UV finding names mends it") {
  int count = 0;
  holds("UV", [&] {
    Build build = drawn_tank();
    build.lamps = {drawn_uv_lamp()};
    build.kept = {drawn_basker()};
    count += mended(build, "uv-");
  });
  CHECK(count > 10);
}

TEST_CASE("the change that a finding on the plants' light names mends it") {
  int count = 0;
  holds("light", [&] {
    Build build = drawn_tank();
    build.lamps = {drawn_day_lamp("day"), drawn_day_lamp("dusk")};
    build.plants = {pinned_plant(1), pinned_plant(2), pinned_plant(3)};
    count += mended(build, "plants-too-");
  });
  CHECK(count > 20);
}

TEST_CASE("a miss of light that reads as none is none") {
  int count = 0;
  holds("light at the edge", [&] {
    Build build = drawn_tank();
    build.lamps = {drawn_day_lamp("day")};
    build.plants = {pinned_plant(1)};
    for (const Finding& finding : make_plan(build).findings) {
      if (finding.rule != "plants-too-dark") continue;
      const double wanted = *arg<double>(finding, "limit") / *arg<double>(finding, "is");
      Build edge = build;
      edge.lamps[0].flux *= wanted * (1 - 1e-9);
      RC_ASSERT(!has(make_plan(edge), finding));
      edge.lamps[0].flux *= 0.99;
      RC_ASSERT(has(make_plan(edge), finding));
      ++count;
    }
  });
  CHECK(count > 5);
}
