// A kind is one row of generator/kinds: nothing else compares its name, and what the row names is
// there.
#include <catch2/catch.hpp>
#include <regex>
#include <set>

#include "catalogue/wording.h"
#include "kinds/chosen.h"
#include "kinds/fixing.h"
#include "kinds/furnishing.h"
#include "kinds/heater.h"
#include "kinds/lamp.h"
#include "kinds/layer.h"
#include "kinds/opening.h"
#include "kinds/shape.h"
#include "kinds/wall.h"
#include "read/key.h"
#include "tree.h"
#include "world/world.h"

namespace {

using namespace loamsheet;

Wording english() {
  auto world = real_world();
  auto wording = read_wording(*world, "en", UnitSystem::metric);
  REQUIRE(wording);
  return *wording.value;
}

// What goods are called, with those whose rows have none left out.
std::set<std::string> goods() {
  std::set<std::string> names;
  const auto add = [&](const auto& rows) {
    for (const auto& row : rows) {
      if (!row.item.empty()) names.insert("material." + std::string(row.item));
    }
  };
  add(LampKind::all()), add(HeaterKind::all()), add(FurnishingKind::all());
  add(FixingKind::all()), add(DrainageKind::all());
  for (const WallMaterial& wall : WallMaterial::all()) {
    names.insert("material." + std::string(wall.id));
  }
  for (const OutletKind& outlet : OutletKind::all()) {
    if (outlet.draws) names.insert("material." + std::string(outlet.item));
  }
  return names;
}

std::set<std::string> sentences() {
  std::set<std::string> names;
  for (const LampKind& kind : LampKind::all()) names.emplace(kind.label);
  for (const FurnishingKind& kind : FurnishingKind::all()) names.emplace(kind.label);
  for (const FixingKind& kind : FixingKind::all()) names.emplace(kind.word);
  for (const FloorShape& kind : FloorShape::all())
    names.emplace(kind.name), names.emplace(kind.tank);
  for (const DrainageKind& kind : DrainageKind::all()) {
    names.emplace(kind.how);
    if (kind.keeps_water_off) names.emplace(kind.row), names.emplace(kind.label);
  }
  for (const OpeningKind& kind : OpeningKind::all()) {
    for (const std::string& name : {std::string(kind.open), std::string(kind.meshed)}) {
      names.insert("figure." + name), names.insert("figure." + name + "-from");
    }
  }
  return names;
}

}  // namespace

TEST_CASE("every key that chooses a kind is in the table, and so are the keys that kinds name") {
  for (const ChosenKey& chosen : chosen_keys()) {
    INFO(chosen.path);
    CHECK(find_key(spec_keys(), chosen.path));
    const std::string group(chosen.path.substr(0, chosen.path.rfind('.') + 1));
    std::set<std::string_view> ids;
    for (const KindKeys& kind : chosen.kinds) {
      INFO(kind.id);
      CHECK(ids.insert(kind.id).second);
      std::istringstream keys{std::string(kind.keys)};
      for (std::string key; std::getline(keys, key, '|');) {
        CHECK(find_key(spec_keys(), group + key));
      }
    }
  }
}

TEST_CASE("what a kind is called is in the templates") {
  const Wording wording = english();
  for (const auto& names : {goods(), sentences()}) {
    for (const std::string& name : names) {
      INFO(name);
      CHECK(wording.knows(name));
    }
  }
}

TEST_CASE("no code compares the name of a kind, a shape or a wall") {
  const std::regex compared(R"re((kind|shape|material|fixed_by|outlet)(->id)?\)? [=!]= ")re");
  for (const auto& file : tree::files("generator", {".h", ".cpp"})) {
    INFO(file);
    for (const auto& line : tree::lines_of(file)) {
      INFO(line);
      CHECK_FALSE(std::regex_search(line, compared));
    }
  }
}
