// Profiles: found, laid under the spec, and named as the origin of their values.
#include <catch2/catch.hpp>

#include "read_helpers.h"

using namespace loamsheet;

namespace {

const std::string head = "build: {title: T, reference: R1, plant_on: 2026-03-07}\n";
const std::string tank =
    "enclosure:\n  footprint: {shape: rectangle, width: 60 cm, depth: 40 cm}\n  height: 50 cm\n"
    "  walls: {material: glass, thickness: 5 mm}\nlayers:\n"
    "  substrate: {mix: woodland, front: 5 cm, back: 8 cm}\n";

std::string profile(const std::string& revision, const std::string& rest) {
  return "profile: {revision: " + revision + "}\n" + rest;
}

Spec read(MemoryWorld& world, const std::string& spec, const std::string& shop = "") {
  world.files["jobs/spec.yaml"] = spec;
  auto out = read_spec(world, "jobs/spec.yaml", shop);
  INFO(rendered(world, out.messages));
  REQUIRE(out);
  return *out.value;
}

std::string problems(MemoryWorld& world, const std::string& spec) {
  world.files["jobs/spec.yaml"] = spec;
  return rendered(world, read_spec(world, "jobs/spec.yaml", "").messages);
}

}  // namespace

TEST_CASE("later profiles win over earlier, the spec over all") {
  MemoryWorld world;
  world.files["specs/profiles/a.yaml"] =
      profile("1", tank + "room: {temperature: 10–20 °C, humidity: 30–40 %}\n");
  world.files["specs/profiles/b.yaml"] = profile("7", "room: {humidity: 50–60 %}\n");
  const Spec spec = read(world, "use: [a, b]\n" + head + "enclosure: {height: 70 cm}\n");
  CHECK(spec.root.number("enclosure.height") == 700);
  CHECK(spec.root.find("enclosure.height")->origin.empty());
  CHECK(spec.root.find("enclosure.walls.thickness")->origin == "a, revision 1");
  CHECK(spec.root.range("room.humidity") == Range<double>{0.5, 0.6});
  CHECK(spec.root.find("room.humidity")->origin == "b, revision 7");
  CHECK(spec.root.range("room.temperature") == Range<double>{10, 20});
  REQUIRE(spec.profiles.size() == 2);
  CHECK(spec.profiles[1].name == "b");
  CHECK(spec.profiles[1].revision == "7");
  CHECK(spec.profiles[1].path == "specs/profiles/b.yaml");
}

TEST_CASE("a profile beside the spec wins over the shop's, that over loamsheet's own") {
  MemoryWorld world;
  world.files["specs/profiles/a.yaml"] = profile("1", tank);
  CHECK(read(world, "use: [a]\n" + head, "shop").profiles[0].path == "specs/profiles/a.yaml");
  world.files["shop/a.yaml"] = profile("2", tank);
  CHECK(read(world, "use: [a]\n" + head, "shop").profiles[0].path == "shop/a.yaml");
  world.files["jobs/profiles/a.yaml"] = profile("3", tank);
  CHECK(read(world, "use: [a]\n" + head, "shop").profiles[0].revision == "3");
}

TEST_CASE("under a question mark lies what a profile states") {
  MemoryWorld world;
  world.files["specs/profiles/a.yaml"] = profile("1", tank + "room: {humidity: 30–40 %}\n");
  world.files["specs/profiles/b.yaml"] = profile("2", "room: {humidity: ?}\n");
  const Spec spec = read(world, "use: [a, b]\n" + head + "room: {humidity: ?}\n");
  CHECK(spec.root.unknown("room.humidity"));
  const auto below = spec.root.find("room.humidity")->shadowed;
  REQUIRE(below);
  CHECK(below->range("") == Range<double>{0.3, 0.4});
  CHECK(below->origin == "a, revision 1");
}

TEST_CASE("a question mark that no profile answers has nothing under it") {
  MemoryWorld world;
  const Spec spec = read(world, head + tank + "room: {humidity: ?}\n");
  CHECK(spec.root.unknown("room.humidity"));
  CHECK_FALSE(spec.root.find("room.humidity")->shadowed);
}

TEST_CASE("lists are taken whole, but items with names are laid over each other") {
  MemoryWorld world;
  const std::string lamp = "kind: bar, power: 50 W, at: [45 cm, 32 cm, 66 cm], hours: 12 h}";
  world.files["specs/profiles/a.yaml"] =
      profile("1", tank + "shop: {closed: [sunday, monday]}\nlamps:\n  - {id: day, " + lamp +
                       "\n  - {id: dusk, " + lamp + "\n");
  const Spec spec =
      read(world, "use: [a]\n" + head + "shop: {closed: [friday]}\nlamps:\n  - {id: uv, " + lamp +
                      "\n  - {id: dusk, hours: 2 h}\n");
  REQUIRE(spec.root.find("shop.closed")->items.size() == 1);
  const Node& lamps = *spec.root.find("lamps");
  REQUIRE(lamps.items.size() == 3);
  CHECK(spec.root.text("lamps[0].id") == "day");
  CHECK(spec.root.text("lamps[1].id") == "dusk");
  CHECK(spec.root.number("lamps[1].hours") == 2);
  CHECK(spec.root.number("lamps[1].power") == 50);
  CHECK(spec.root.text("lamps[2].id") == "uv");
  CHECK(lamps.items[2].find("at[2]")->path == "lamps[2].at[2]");
}

TEST_CASE("another shape or kind takes nothing over from the profile's") {
  MemoryWorld world;
  world.files["specs/profiles/a.yaml"] =
      profile("1", tank + "  drainage: {kind: granules, material: expanded-clay, depth: 5 cm}\n");
  const Spec spec = read(world, "use: [a]\n" + head +
                                    "enclosure: {footprint: {shape: hexagon, width: 50 cm}}\n"
                                    "layers: {drainage: {kind: none}}\n");
  CHECK(spec.root.number("enclosure.footprint.width") == 500);
  CHECK_FALSE(spec.root.has("enclosure.footprint.depth"));
  CHECK_FALSE(spec.root.has("layers.drainage.depth"));
  const Spec wider = read(world, "use: [a]\n" + head + "enclosure: {footprint: {width: 80 cm}}\n");
  CHECK(wider.root.number("enclosure.footprint.width") == 800);
  CHECK(wider.root.number("enclosure.footprint.depth") == 400);
}

TEST_CASE("what a profile may not say is shown in the profile") {
  MemoryWorld world;
  world.files["specs/profiles/a.yaml"] = profile("1", tank + "use: [b]\n" + "animals: []\n");
  CHECK(problems(world, "use: [a]\n" + head) ==
        "specs/profiles/a.yaml:8:1: error: 'use' may not stand in a profile\n"
        "  use: [b]\n"
        "  ^~~\n"
        "hint: put it in the specs that use this profile\n"
        "specs/profiles/a.yaml:9:1: error: 'animals' may not stand in a profile\n"
        "  animals: []\n"
        "  ^~~~~~~\n"
        "hint: put it in the specs that use this profile\n");
}

TEST_CASE("a profile without a revision is not taken") {
  MemoryWorld world;
  world.files["specs/profiles/a.yaml"] = "profile: {help: A tank.}\n" + tank;
  CHECK(problems(world, "use: [a]\n" + head) ==
        "specs/profiles/a.yaml:1:1: error: 'profile' has no 'revision'\n"
        "  profile: {help: A tank.}\n"
        "  ^~~~~~~\n"
        "expected: letters, digits, '.', '_' and '-', at most 8, such as 2\n"
        "hint: Its revision, printed beside every value that comes from it.\n");
}

TEST_CASE("every profile of loamsheet's own reads in a spec") {
  MemoryWorld world = world_with_profiles();
  const auto files = world.list("specs/profiles");
  CHECK(files.size() >= 8);
  for (const auto& file : files) {
    const std::string name = file.substr(0, file.size() - 5);
    INFO(name);
    const Spec spec = read(world, "use: [" + name + "]\n" + head + tank);
    CHECK(spec.profiles.size() == 1);
    CHECK(spec.profiles[0].name == name);
  }
}
