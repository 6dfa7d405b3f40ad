// example: a spec that holds, with places to change, and the real catalogue.
#pragma once
#include <catch2/catch.hpp>
#include <string>

#include "catalogue/catalogue.h"
#include "check/check.h"
#include "read/read.h"
#include "world/world.h"

inline const std::string example_spec = R"(
build: {title: Test tank, reference: TT-0001, plant_on: 2026-03-07}
enclosure:
  footprint: {shape: rectangle, width: 60 cm, depth: 45 cm}
  height: 45 cm
  walls: {material: glass, thickness: 5 mm}
  openings:
    - {name: lid, where: top, over: [[0 cm, 20 cm], [60 cm, 45 cm]],
       mesh: {open: 40 %, aperture: 1 mm}}
    - {name: slot, where: front, at: 15 cm, area: 60 cm2}
    - {name: doors, where: front, at: 18 cm, kind: door, length: 38 cm, gap: 2 mm}
layers:
  drainage: {kind: granules, material: expanded-clay, depth: 5 cm}
  separator: {material: fibreglass-mesh, turn_up: 3 cm}
  substrate: {mix: woodland, front: 5 cm, back: 8 cm}
  litter: {material: oak-leaves, depth: 1 cm}
)";

inline std::string with(std::string text, const std::string& from, const std::string& to) {
  const auto at = text.find(from);
  REQUIRE(at != std::string::npos);
  return text.replace(at, from.size(), to);
}

inline const loamsheet::Catalogue& real_catalogue() {
  static const auto catalogue = [] {
    auto world = loamsheet::real_world();
    return loamsheet::read_catalogue(*world).value.value();
  }();
  return catalogue;
}

inline loamsheet::Build built(const std::string& text,
                              const std::map<std::string, std::string>& profiles = {}) {
  loamsheet::MemoryWorld world;
  world.files["a/spec.yaml"] = text;
  for (const auto& [name, body] : profiles) world.files["a/profiles/" + name + ".yaml"] = body;
  auto spec = loamsheet::read_spec(world, "a/spec.yaml", "");
  INFO(loamsheet::render(spec.messages, {}));
  REQUIRE(spec.value);
  auto build = loamsheet::check(*spec.value, real_catalogue());
  INFO(loamsheet::render(build.messages, {}));
  REQUIRE(build.value);
  return *build.value;
}
