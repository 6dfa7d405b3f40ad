#include "check/life.h"

#include "example.h"

using namespace loamsheet;

namespace {

const std::string living = R"(
animals:
  - {species: tribolonotus-gracilis, count: 2, stage: juvenile, mass: 38 g, acquired: 2026-01-10}
plants:
  - {species: peperomia-obtusifolia, count: 2}
  - 3 fittonia-albivenis
  - {species: ficus-pumila, at: [5 cm, 40 cm, 30 cm], on: perch}
  - {species: tillandsia, on: perch}
crew:
  - {species: folsomia-candida, cultures: 2}
furnishings:
  - {id: perch, kind: branch, from: [10 cm, 35 cm, 20 cm], to: [50 cm, 25 cm, 40 cm], diameter: 4 cm}
  - {id: shelf, kind: ledge, at: [40 cm, 40 cm, 35 cm], width: 25 cm, depth: 10 cm, pocket: 1.5 L,
     turned: 20 °}
)";

}  // namespace

TEST_CASE("a count becomes so many plants, numbered in the order of the spec") {
  const Build b = built(example_spec + living);
  REQUIRE(b.plants.size() == 7);
  for (size_t i = 0; i < b.plants.size(); ++i) CHECK(b.plants[i].number == static_cast<int>(i) + 1);
  CHECK(b.plants[1].facts.id == "peperomia-obtusifolia");
  CHECK(b.plants[4].facts.id == "fittonia-albivenis");
  CHECK(b.plants[4].facts.habit->value == "ground-cover");
}

TEST_CASE("a plant brings the light that its class wants") {
  const Build b = built(example_spec + living);
  CHECK(b.plants[0].ppfd == Range<double>{50, 200});
  CHECK(b.plants[2].ppfd == Range<double>{10, 50});
}

TEST_CASE("a pinned plant keeps its place and what it grows on") {
  const Build b = built(example_spec + living);
  CHECK(b.plants[5].pinned == Point{50, 400});
  CHECK(b.plants[5].pinned_height == 300_mm);
  CHECK(b.plants[5].on == "perch");
  CHECK_FALSE(b.plants[6].pinned);
  CHECK(b.plants[6].on == "perch");
}

TEST_CASE("animals and crew come with their facts") {
  const Build b = built(example_spec + living);
  REQUIRE(b.kept.size() == 1);
  CHECK(b.kept[0].count == 2);
  CHECK(b.kept[0].juvenile);
  CHECK(b.kept[0].mass->v == Approx(0.038));
  CHECK(iso(*b.kept[0].acquired) == "2026-01-10");
  CHECK(b.kept[0].facts.wear->value == 3);
  REQUIRE(b.crew.size() == 1);
  CHECK(b.crew[0].cultures == 2);
  CHECK(b.crew[0].facts.group->value == "springtail");
}

TEST_CASE("furnishings keep their shape") {
  const Build b = built(example_spec + living);
  REQUIRE(b.furnishings.size() == 2);
  CHECK(b.furnishings[0].to.z == 400);
  CHECK(b.furnishings[0].diameter == 40_mm);
  CHECK(b.furnishings[1].width == 250_mm);
  CHECK(b.furnishings[1].pocket == 1.5_L);
  CHECK(b.furnishings[1].turned == 20);
}

TEST_CASE("more plants than any enclosure holds are an error") {
  MemoryWorld world;
  world.files["a/spec.yaml"] =
      example_spec + "plants: [300 fittonia-albivenis, 201 fittonia-albivenis]\n";
  const auto spec = read_spec(world, "a/spec.yaml", "");
  REQUIRE(spec.value);
  const auto build = check(*spec.value, real_catalogue());
  CHECK_FALSE(build.value);
  REQUIRE(build.messages.size() == 1);
  CHECK(build.messages[0].message == "there are more than 500 plants up to here");
}
