#include "plan/plan.h"

#include <algorithm>
#include <catch2/catch.hpp>

#include "builds.h"

using namespace loamsheet;
using namespace loamsheet::tests;

namespace {

// All but that the box is heavy to lift, which every build here shares.
std::vector<std::string> rules(const Build& build) {
  std::vector<std::string> all;
  for (const Finding& f : make_plan(build).findings) {
    if (f.rule != "lift-too-heavy") all.push_back(f.rule);
  }
  return all;
}

bool fires(const Build& build, const std::string& rule) {
  const auto all = rules(build);
  return std::find(all.begin(), all.end(), rule) != all.end();
}

Weight weight_of(const Build& build, const std::string& rule) {
  for (const Finding& f : make_plan(build).findings) {
    if (f.rule == rule) return f.weight;
  }
  FAIL("does not fire: " << rule);
  return Weight::note;
}

Opening slot(Opening::Where where, Millimetres lower_edge) {
  return opening("slot", where, lower_edge);
}

Build with_kind(BuildKind kind, const char* drainage) {
  Build build = box_build();
  build.kind = kind;
  build.layers.drainage.kind = drainage;
  return build;
}

constexpr BuildKind every_kind[] = {BuildKind::humid, BuildKind::temperate, BuildKind::arid,
                                    BuildKind::burrowing, BuildKind::semi_aquatic};

}  // namespace

TEST_CASE("a sound box has nothing to say") {
  CHECK(rules(box_build()).empty());
  CHECK(make_plan(box_build()).status == Status::cleared);
}

TEST_CASE("layers are held against an opening at its own wall") {
  // Litter reaches 110 mm in front, 140 mm at the back, and so 140 mm along the sides.
  const std::tuple<Opening::Where, Millimetres, bool> cases[] = {
      {Opening::Where::front, 110_mm, false}, {Opening::Where::front, 109_mm, true},
      {Opening::Where::back, 140_mm, false},  {Opening::Where::back, 139_mm, true},
      {Opening::Where::left, 140_mm, false},  {Opening::Where::left, 139_mm, true},
      {Opening::Where::right, 139_mm, true}};
  for (const auto& [where, edge, wanted] : cases) {
    Build build = box_build();
    build.enclosure.openings.push_back(slot(where, edge));
    CHECK(fires(build, "layers-above-sill") == wanted);
  }
}

TEST_CASE("layers above a sill are a stop that names the opening and the excess") {
  Build build = box_build();
  build.enclosure.openings.push_back(slot(Opening::Where::front, 100_mm));
  build.enclosure.stated_empty_mass = 7_kg;
  const Plan plan = make_plan(build);
  CHECK(plan.status == Status::not_cleared);
  REQUIRE(plan.findings.size() == 1);
  const Finding& f = plan.findings[0];
  CHECK(f.weight == Weight::stop);
  CHECK(f.where == build.enclosure.openings[1].where);
  CHECK(std::get<std::string>(f.args[0].second) == "slot");
  CHECK(std::get<Millimetres>(f.args[3].second) == 10_mm);
}

TEST_CASE("at the wall of the water area the water is what counts") {
  Build build = box_build();
  build.water_area = WaterArea{WaterArea::Side::left, {0.3}, 100_mm};
  build.enclosure.openings.push_back(slot(Opening::Where::left, 120_mm));
  CHECK(rules(build).empty());
  build.water_area->depth = 125_mm;
  CHECK(rules(build) == std::vector<std::string>{"water-above-sill"});
}

TEST_CASE("an opening in the top has no sill") {
  Build build = box_build();
  build.enclosure.openings.push_back(slot(Opening::Where::top, 0_mm));
  build.enclosure.openings[1].lower_edge.reset();
  CHECK(rules(build).empty());
}

TEST_CASE("layers that leave too little height") {
  Build build = box_build();
  build.enclosure.height = 210_mm;  // layers reach 140: a third is left
  CHECK_FALSE(fires(build, "layers-fill-enclosure"));
  build.enclosure.height = 209_mm;
  CHECK(weight_of(build, "layers-fill-enclosure") == Weight::caution);
}

TEST_CASE("a slope that slides") {
  Build build = box_build();
  build.layers.substrate.back = 364_mm;  // 314 over 450 mm: 34.9 degrees
  CHECK_FALSE(fires(build, "substrate-steep"));
  build.layers.substrate.back = 366_mm;
  CHECK(weight_of(build, "substrate-steep") == Weight::caution);
  std::swap(build.layers.substrate.front, build.layers.substrate.back);
  CHECK(fires(build, "substrate-steep"));
}

TEST_CASE("drainage is demanded in humid builds only") {
  for (BuildKind kind : every_kind) {
    CHECK(fires(with_kind(kind, "none"), "drainage-missing") == (kind == BuildKind::humid));
  }
}

TEST_CASE("drainage is unwanted in arid and burrowing builds only") {
  for (BuildKind kind : every_kind) {
    const bool dry = kind == BuildKind::arid || kind == BuildKind::burrowing;
    CHECK(fires(with_kind(kind, "granules"), "drainage-not-wanted") == dry);
    CHECK_FALSE(fires(with_kind(kind, "none"), "drainage-not-wanted"));
  }
}

TEST_CASE("shallow granules are a caution in humid and temperate builds only") {
  for (BuildKind kind : every_kind) {
    Build build = with_kind(kind, "granules");
    build.layers.drainage.depth = 49_mm;
    const bool damp = kind == BuildKind::humid || kind == BuildKind::temperate;
    CHECK(fires(build, "drainage-too-shallow") == damp);
    build.layers.drainage.kind = "raised-floor";
    CHECK_FALSE(fires(build, "drainage-too-shallow"));
  }
}

TEST_CASE("a humid build without an outlet") {
  Build build = box_build();
  build.layers.drainage.outlet = "none";
  CHECK(weight_of(build, "outlet-missing") == Weight::note);
  build.kind = BuildKind::temperate;
  CHECK_FALSE(fires(build, "outlet-missing"));
}

TEST_CASE("rock and gravel are heavy") {
  Build build = box_build();
  build.enclosure.stand_rating = 500_kg;
  build.layers.drainage.bulk.dry_density = {{1500}, {1600}};
  CHECK(rules(build) == std::vector<std::string>{"heavy-granules"});
}

TEST_CASE("water that stands high after the first watering") {
  Build build = box_build();
  build.layers.substrate.front = build.layers.substrate.back = 80_mm;
  for (SubstratePart& part : build.layers.substrate.parts) part.bulk.field_capacity = {0.80};
  CHECK_FALSE(fires(build, "standing-water-high"));  // about 12 mm
  build.layers.drainage.bulk.voids = {0.2};          // about 27 mm
  CHECK(weight_of(build, "standing-water-high") == Weight::caution);
  build.layers.drainage.bulk.voids = {0.45};
  build.layers.drainage.depth = 20_mm;  // 12 mm again, but 10 mm is the highest
  CHECK(fires(build, "standing-water-high"));
}

TEST_CASE("the stand against the heaviest the tank may be") {
  Build build = box_build();
  const Kilograms wet = make_plan(build).mass.wet.high;
  build.enclosure.stand_rating = wet * 1.26;  // 20.6 % free
  CHECK(rules(build).empty());
  build.enclosure.stand_rating = wet * 1.24;  // 19.4 % free
  CHECK(weight_of(build, "stand-margin-thin") == Weight::caution);
  build.enclosure.stand_rating = wet * 0.999;
  CHECK(weight_of(build, "stand-overloaded") == Weight::stop);
  build.enclosure.stand_rating.reset();
  CHECK(weight_of(build, "no-stand-rating") == Weight::note);
}

TEST_CASE("a toughened base is never drilled") {
  Build build = box_build();
  build.layers.drainage.outlet = "port";
  CHECK(weight_of(build, "port-in-toughened-base") == Weight::stop);
  build.enclosure.walls.toughened_base = false;
  CHECK(rules(build).empty());
}

TEST_CASE("a furnishing without a mass is noted") {
  Build build = box_build();
  build.standing.push_back(block({100, 100}, {0.01}, 10_mm));
  build.standing[0].mass.reset();
  CHECK(weight_of(build, "mass-not-stated") == Weight::note);
  build.standing[0].mass = 1_kg;
  CHECK(rules(build).empty());
}

TEST_CASE("furnishings that leave a layer no room") {
  Build build = box_build();
  build.standing.push_back(block({450, 225}, {0.5}, 200_mm));
  CHECK(weight_of(build, "no-room-for-layers") == Weight::stop);
}

TEST_CASE("an unknown value is named") {
  Build build = with_unknown_moisture(box_build(), 0.05, 0.25);
  CHECK(rules(build) == std::vector<std::string>{"value-unknown"});
}

TEST_CASE("stops come before cautions before notes, each in the order of the spec") {
  Build build = box_build();
  build.layers.drainage.outlet = "port";                                  // stop, line 30
  build.enclosure.openings.push_back(slot(Opening::Where::back, 90_mm));  // stop, line 20
  build.layers.drainage.depth = 45_mm;                                    // caution, line 30
  build.enclosure.stand_rating.reset();                                   // a note without a place
  CHECK(rules(build) == std::vector<std::string>{"layers-above-sill", "port-in-toughened-base",
                                                 "drainage-too-shallow", "no-stand-rating"});
}
