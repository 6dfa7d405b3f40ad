#include <algorithm>
#include <catch2/catch.hpp>
#include <fstream>
#include <map>
#include <set>

#include "air_builds.h"
#include "base/text.h"
#include "living.h"
#include "plan/plan.h"
#include "unfit.h"

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

// A mister that can flood, water with lime, a tank for two to lift, and a stock list of which one
// line is short and another has no price.
Build supplied_box() {
  Build build = box_build();
  build.measured_loss = Range<Litres>{{0.2}, {0.2}};
  build.misting.emplace();
  build.misting->nozzles = 1;
  build.misting->flow.range = {{0.1}, {0.1}};
  build.misting->tank = 100_L;
  build.water_source = "tap";
  build.enclosure.stated_empty_mass = 18_kg;
  build.stock = {{"expanded-clay", "L", 10, Money{40000}, 1, "", {}},
                 {"orchid-bark", "L", 10, std::nullopt, 9, "", {}}};
  return build;
}

Build hand_misted_box() {
  Build build = supplied_box();
  build.misting->by_hand = true;
  build.misting->pull.range = {{0.001}, {0.001}};
  return build;
}

// Plants that are unsafe, too delicate, too hot and too cold, in places that they cannot have.
Build ill_planted_box() {
  Build build = weighed_box();
  Plant risky = plant("risky", "upright"), huge = plant("huge", "upright");
  risky.robustness = known(1);
  risky.warmest = known(Celsius{20});
  for (const char* hazard : {"latex-sap", "spines"}) {
    risky.hazards.push_back({hazard, {"common practice"}});
  }
  huge.height = known(Range<Millimetres>{3000_mm, 4000_mm});
  huge.moisture = known<std::string>("dry");
  huge.coldest = known(Celsius{26});
  add(build, risky, 3);
  add(build, huge, 2);
  Plant food = plant("food", "rosette");
  food.robustness = known(1);
  food.edible = known(true);
  add(build, food);
  Plant liked = plant("liked", "rosette");
  liked.dampest = known(Fraction{0.2});
  liked.hazards.push_back({"caustic-latex", {"common practice"}});
  add(build, liked);
  build.furnishings = {bowl({700, 200, 0})};
  build.plants[0].pinned = Point{700, 200};
  build.plants[1].pinned = Point{720, 200};
  build.plants[3].pinned = Point{200, 200};
  return build;
}

KeptAnimal rough_animal(const std::string& diet) {
  KeptAnimal kept = animal(diet, diet);
  kept.facts.digs = known(true);
  kept.facts.body.skin_takes_up = known(true);
  kept.facts.humidity = known(Range<Fraction>{{0.4}, {0.5}});
  kept.facts.day = known(Range<Celsius>{{24}, {26}});
  kept.facts.night = known(Range<Celsius>{{18}, {20}});
  kept.facts.floor_length = kept.facts.floor_width = kept.facts.headroom =
      known(Range<Millimetres>{5000_mm, 5000_mm});
  return kept;
}

CrewUse crew(Celsius coldest, Celsius warmest) {
  CrewUse use;
  use.facts.group = known<std::string>("springtail");
  use.facts.coldest = known(coldest), use.facts.warmest = known(warmest);
  return use;
}

Build ill_peopled_box(BuildKind kind) {
  Build build = ill_planted_box();
  build.kind = kind;
  build.kept = {rough_animal("herbivore"), rough_animal("omnivore"), rough_animal("carnivore")};
  build.kept[0].juvenile = true;
  build.kept[0].facts.digs.reset();
  build.kept[0].mass = Kilograms{0.004};
  build.kept[0].facts.planted_with = known(std::vector<std::string>{"liked"});
  build.kept[2].facts.body.skin_takes_up = known(false);
  build.crew = {crew({10}, {20}), crew({30}, {40})};
  return build;
}

// Fixings that are not stated or too weak, foam under water, a stone over
// a digger and another, a dose too strong, too few cultures, and a sack too heavy.
Build ill_fitted_box(bool dug) {
  Build build = box_build();
  build.water_area = WaterArea{WaterArea::Side::left, {0.3}, 100_mm, true, place(40, 3)};
  build.enclosure.background = Background{"foam", 30_mm, "wedged", KilogramsPerCubicMetre{45}};
  Furnishing loose, held;
  loose.id = held.id = "shelf", loose.kind = held.kind = "ledge";
  held.fixed_by = "magnet", held.mass = 3_kg;
  build.furnishings = {loose, held};
  build.standing = {block({600, 200}, {0.01}, 50_mm)};
  build.standing[0].kind = "stone", build.standing[0].on_base = false;
  if (dug) build.kept = {rough_animal("carnivore")};
  build.amendments = {{"organic-starter-feed", 3, false, {2}}};
  build.crew = {crew({10}, {30})};
  build.crew[0].facts.density = known(Range<double>{50000, 60000});
  build.stock = {{"expanded-clay", "L", 50, Money{310000}, 5, "", {}}};
  return build;
}

// Terraces that nothing holds, that a stone holds badly, and under which a ledge hangs.
Build ill_terraced_box() {
  Build build = box_build();
  build.layers.substrate.terraces = {
      {100_mm, 60_mm, "", {}}, {200_mm, 70_mm, "stub", {}}, {300_mm, 80_mm, "shelf", {}}};
  Furnishing stub, shelf;
  stub.id = "stub", stub.kind = "stone", stub.stands = true;
  stub.width = 200_mm, stub.depth = 40_mm, stub.height = 5_mm, stub.at = {450, 260, 0};
  shelf.id = "shelf", shelf.kind = "ledge", shelf.at = {450, 300, 200};
  shelf.width = 900_mm, shelf.depth = 40_mm, shelf.height = 40_mm;
  build.furnishings = {stub, shelf};
  return build;
}

// One plant pinned where its roots find no depth, and one that finds none anywhere.
Build shallow_box() {
  Build build = box_build();
  build.layers.substrate.front = build.layers.substrate.back = 15_mm;
  add(build, plant("fern", "fern"), 2);
  build.plants[0].pinned = Point{300, 200};
  return build;
}

// Planted and moved while the shop is closed, and moved at once.
Build badly_dated_box() {
  Build build = box_build();
  build.shop.closed = {true, true, true, true, true, true, true};
  build.identity.moved = true;
  build.identity.moves_on = plus_days(build.identity.plant_on, 3);
  build.calendar_days = 5;
  return build;
}

// Chosen, replaced and taken on where nothing is, in the first revision.
Build revised_box() {
  Build build = box_build();
  add(build, plant("fern", "fern"));
  build.plants[0].chosen = true;
  build.to_choose.push_back({3, 10, 1, place(61, 5)});
  PlantKind fern{plant("fern", "fern"), {50, 200}};
  build.replaced.push_back({99, fern, plus_days(build.identity.plant_on, 18), place(80, 5)});
  build.layers.substrate.front = 400_mm;
  build.accepted = {{"layers-above-sill", "bench 2", "none", place(90, 5)},
                    {"species-mixed", "bench 2", "none", place(91, 5)}};
  return build;
}

Plan plan_of(Build build) {
  auto selections = choose_plants(build);
  return make_plan(build, std::move(selections));
}

// Builds that between them break every rule.
std::vector<Build> broken_builds() {
  Build arid = box_build(), undrained = box_build(), thin = box_build();
  arid.kind = BuildKind::arid;
  undrained.layers.drainage.kind = "none";
  thin.enclosure.stand_rating = make_plan(thin).mass.wet.high * 1.1;
  std::vector<Build> all = climate_broken();
  const auto unfit = unfit_builds();
  all.insert(all.end(), unfit.begin(), unfit.end());
  const auto airs = air_broken();
  all.insert(all.end(), airs.begin(), airs.end());
  const std::vector<Build> others{flawed_box(),
                                  badly_dated_box(),
                                  revised_box(),
                                  bare_box(),
                                  arid,
                                  undrained,
                                  thin,
                                  supplied_box(),
                                  hand_misted_box(),
                                  ill_fitted_box(true),
                                  ill_fitted_box(false),
                                  ill_terraced_box(),
                                  shallow_box(),
                                  ill_peopled_box(BuildKind::humid),
                                  ill_peopled_box(BuildKind::arid)};
  all.insert(all.end(), others.begin(), others.end());
  return all;
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
    for (const Finding& finding : plan_of(build).findings) {
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
    for (const Finding& finding : plan_of(build).findings) {
      if (finding.weight != Weight::stop) continue;
      INFO(finding.rule);
      CHECK(all.at("findings." + finding.rule + ".source").find("from memory") ==
            std::string::npos);
      for (const auto& [slot, value] : finding.args) {
        if (slot != "source") continue;
        CHECK(std::get<std::string>(value).find("from memory") == std::string::npos);
        CHECK_FALSE(std::get<std::string>(value).empty());
      }
    }
  }
}
