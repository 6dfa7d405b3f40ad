#include <algorithm>
#include <catch2/catch.hpp>
#include <fstream>
#include <map>
#include <set>

#include "base/text.h"
#include "builds.h"
#include "plan/plan.h"

using namespace loamsheet;
using namespace loamsheet::tests;

namespace {

using Words = std::map<std::string, std::string>;

// The flat "name: sentence" lines of the findings' words.
Words words() {
  std::ifstream in(LOAMSHEET_SOURCE "/templates/en/findings.yaml");
  Words all;
  for (std::string line; std::getline(in, line);) {
    const size_t colon = line.find(": ");
    if (line.starts_with("findings.")) all[line.substr(0, colon)] = line.substr(colon + 2);
  }
  return all;
}

// The names between braces, without the form that may follow a colon.
std::set<std::string> slots(const std::string& sentence) {
  std::set<std::string> all;
  for (size_t at = 0; (at = sentence.find('{', at)) != std::string::npos; ++at) {
    all.insert(split(sentence.substr(at + 1, sentence.find('}', at) - at - 1), ':')[0]);
  }
  return all;
}

Build flawed_box() {
  Build build = with_unknown_moisture(box_build(), 0.05, 0.25);
  build.not_used.push_back({"lamps", place(50, 1)});
  build.water_area = WaterArea{WaterArea::Side::left, {0.3}, 100_mm};
  build.enclosure.openings.push_back(opening("slot", Opening::Where::back, 60_mm));
  build.enclosure.openings.push_back(opening("vent", Opening::Where::left, 60_mm));
  build.enclosure.height = 150_mm;
  build.enclosure.stand_rating = 20_kg;
  build.layers.drainage.outlet = "port";
  build.layers.drainage.depth = 20_mm;
  build.layers.drainage.bulk.dry_density = {{1500}, {1600}};
  build.layers.drainage.bulk.voids = {0.01};
  return build;
}

Build bare_box() {
  Build build = box_build();
  build.enclosure.stand_rating.reset();
  build.layers.drainage.outlet = "none";
  build.layers.substrate.back = 400_mm;
  build.standing.push_back(block({450, 225}, {0.5}, 900_mm));
  build.standing[0].mass.reset();
  return build;
}

// Builds that between them break every rule.
std::vector<Build> broken_builds() {
  Build arid = box_build(), undrained = box_build(), thin = box_build();
  arid.kind = BuildKind::arid;
  undrained.layers.drainage.kind = DrainageKind::none;
  thin.enclosure.stand_rating = make_plan(thin).mass.wet.high * 1.1;
  return {flawed_box(), bare_box(), arid, undrained, thin};
}

std::set<std::string> names(const Finding& finding) {
  std::set<std::string> all;
  for (const auto& [slot, value] : finding.args) all.insert(slot);
  return all;
}

bool fills(const std::set<std::string>& args, const std::set<std::string>& wanted) {
  return std::includes(args.begin(), args.end(), wanted.begin(), wanted.end());
}

}  // namespace

TEST_CASE("every rule has its words, and every slot of them is filled") {
  const Words all = words();
  std::set<std::string> said;
  for (const Build& build : broken_builds()) {
    for (const Finding& finding : make_plan(build).findings) {
      for (const char* part : {".text", ".remedy", ".source"}) {
        const std::string name = "findings." + finding.rule + part;
        INFO(name);
        REQUIRE(all.count(name) == 1);
        CHECK(fills(names(finding), slots(all.at(name))));
        said.insert(name);
      }
    }
  }
  for (const auto& [name, sentence] : all) {
    INFO(name << " is never said");
    CHECK(said.count(name) == 1);
  }
}

TEST_CASE("no stop stands on memory alone") {
  const Words all = words();
  for (const Build& build : broken_builds()) {
    for (const Finding& finding : make_plan(build).findings) {
      if (finding.weight != Weight::stop) continue;
      INFO(finding.rule);
      CHECK(all.at("findings." + finding.rule + ".source").find("from memory") ==
            std::string::npos);
    }
  }
}
