#include "check/check.h"

#include <algorithm>

#include "example.h"

using namespace loamsheet;

namespace {

const Assumed* assumed(const Build& b, const std::string& key) {
  const auto at = std::find_if(b.assumed.begin(), b.assumed.end(),
                               [&](const Assumed& a) { return a.key == key; });
  return at == b.assumed.end() ? nullptr : &*at;
}

}  // namespace

TEST_CASE("an opening's free area is its area through the open share of its mesh") {
  const Build b = built(example_spec);
  const auto& o = b.enclosure.openings;
  REQUIRE(o.size() == 3);
  CHECK(o[0].gross.v == Approx(0.15));  // 60 cm by 25 cm, from 'over'
  CHECK(o[0].free.v == Approx(0.06));   // 40 % of it
  CHECK_FALSE(o[0].lower_edge);
  CHECK(o[1].free.v == Approx(0.006));    // no mesh: all of it
  CHECK(o[2].free.v == Approx(0.00076));  // 38 cm by 2 mm
  CHECK(o[2].kind->swings);
}

TEST_CASE("the sill is the lower edge of the lowest side opening") {
  const Build b = built(example_spec);
  CHECK(b.enclosure.sill == 15_cm);
  REQUIRE(assumed(b, "enclosure.sill"));
  CHECK(assumed(b, "enclosure.sill")->value == "15 cm");
  const Build stated = built(with(example_spec, "  openings:", "  sill: 15 cm\n  openings:"));
  CHECK(stated.enclosure.sill == 15_cm);
  CHECK_FALSE(assumed(stated, "enclosure.sill"));
}

TEST_CASE("without side openings the sill is the height") {
  std::string text =
      with(example_spec, "    - {name: slot, where: front, at: 15 cm, area: 60 cm2}\n", "");
  text = with(
      text, "    - {name: doors, where: front, at: 18 cm, kind: door, length: 38 cm, gap: 2 mm}\n",
      "");
  CHECK(built(text).enclosure.sill == 45_cm);
}

TEST_CASE("every shape becomes its footprint") {
  const std::string box = "{shape: rectangle, width: 60 cm, depth: 45 cm}";
  const std::string lid = "over: [[0 cm, 20 cm], [60 cm, 45 cm]],";
  const auto area_as = [&](const std::string& shape) {
    const Build b = built(with(with(example_spec, box, shape), lid, "area: 100 cm2,"));
    return area(b.enclosure.footprint).v;
  };
  CHECK(area_as(box) == Approx(0.27));
  CHECK(area_as("{shape: corner, width: 60 cm, cut: 20 cm}") == Approx(0.36 - 0.02));
  CHECK(area_as("{shape: round, width: 60 cm}") == Approx(0.09 * 3.14159265358979));
  CHECK(area_as("{shape: hexagon, width: 60 cm}") == Approx(0.36 * 0.8660254037844386));
  CHECK(area_as("{shape: bow-front, width: 60 cm, depth: 45 cm, bulge: 30 cm}") ==
        Approx(0.27 + 0.045 * 3.14159265358979));
  CHECK(area_as("{shape: outline, points: [[0 cm, 0 cm], [0 cm, 40 cm], [60 cm, 0 cm]]}") ==
        Approx(0.12));
}

TEST_CASE("a bow stands out at negative y and widens the box") {
  const std::string box = "{shape: rectangle, width: 60 cm, depth: 45 cm}";
  const Build b =
      built(with(example_spec, box, "{shape: bow-front, width: 60 cm, depth: 45 cm, bulge: 8 cm}"));
  CHECK(extent(b.enclosure.footprint).bottom == Approx(-80));
  CHECK(b.enclosure.depth.v == Approx(530));
}

TEST_CASE("an outline that starts elsewhere is moved to the front-left corner") {
  const std::string box = "{shape: rectangle, width: 60 cm, depth: 45 cm}";
  const Build b = built(with(
      example_spec, box,
      "{shape: outline, points: [[5 cm, 2 cm], [65 cm, 2 cm], [65 cm, 47 cm], [5 cm, 47 cm]]}"));
  CHECK(extent(b.enclosure.footprint).left == 0);
  CHECK(extent(b.enclosure.footprint).bottom == 0);
  CHECK(b.enclosure.width == 60_cm);
}

TEST_CASE("a mix is split by its parts, and settles as the catalogue says") {
  const Build b = built(example_spec);
  const auto& s = b.layers.substrate;
  REQUIRE(s.parts.size() == 5);
  double sum = 0;
  for (const auto& part : s.parts) sum += part.share.v;
  CHECK(sum == Approx(1));
  CHECK(s.parts[0].bulk.material == "tree-fern-fibre");
  CHECK(s.parts[0].share.v == Approx(4.0 / 9));
  CHECK(s.settling.v == Approx(0.12));
  REQUIRE(assumed(b, "layers.substrate.settling"));
  CHECK(assumed(b, "layers.substrate.settling")->from == "catalogue");
}

TEST_CASE("a stated settling beats the mix's") {
  const Build b = built(with(example_spec, "back: 8 cm", "back: 8 cm, settling: 20 %"));
  CHECK(b.layers.substrate.settling.v == Approx(0.2));
  CHECK_FALSE(assumed(b, "layers.substrate.settling"));
}

TEST_CASE("an own mix stands before the catalogue's and settles as its parts do") {
  const Build b = built(example_spec + "mixes: {woodland: {orchid-bark: 3, coir: 1}}\n");
  const auto& s = b.layers.substrate;
  REQUIRE(s.parts.size() == 2);
  CHECK(s.parts[1].share.v == Approx(0.25));
  CHECK(s.settling.v == Approx(0.75 * 0.08 + 0.25 * 0.15));  // of bark and coir
}

TEST_CASE("an own material stands before the catalogue's, fact by fact") {
  const Build b = built(
      example_spec + "materials: {expanded-clay: {role: drainage, dry_density: 300–400 kg/m3}}\n");
  const Bulk& bulk = b.layers.drainage.bulk;
  CHECK(bulk.dry_density == Range<KilogramsPerCubicMetre>{{350}, {350}});
  CHECK(bulk.voids.v == Approx(0.454));
}

TEST_CASE("field capacity follows from porosity and voids") {
  const Build b = built(with(example_spec, "expanded-clay", "brick") +
                        "materials: {brick: {role: drainage, dry_density: 900 kg/m3, porosity: 60 "
                        "%, voids: 45 %}}\n");
  CHECK(b.layers.drainage.bulk.field_capacity.v == Approx(0.15));
}

TEST_CASE("as placed, a part is as moist as the middle of its range says") {
  const auto moisture = [](const std::string& placed) {
    const Build b = built(with(example_spec, "back: 8 cm", "back: 8 cm, placed: " + placed));
    return b.layers.substrate.parts[1].bulk.moisture_as_placed;  // orchid bark: 2-5 %, 10-18 %
  };
  CHECK(moisture("dry").range.low.v == Approx(0.035));
  CHECK(moisture("dry").range.exact());
  CHECK(moisture("damp").range.high.v == Approx(0.14));
  CHECK(moisture("damp").range.exact());
  CHECK(moisture("damp").unknown == -1);
}

TEST_CASE("placed '?' lies between dry and damp, one unknown for all parts") {
  const Build b =
      built(with(example_spec, "substrate: {mix: woodland, front: 5 cm, back: 8 cm}",
                 "substrate:\n    mix: woodland\n    front: 5 cm\n    back: 8 cm\n    placed: ?"));
  REQUIRE(b.unknowns.size() == 1);
  CHECK(b.unknowns[0].key == "layers.substrate.placed");
  CHECK(b.unknowns[0].shown == "dry–damp");
  CHECK(b.unknowns[0].from == "catalogue");
  for (const auto& part : b.layers.substrate.parts) {
    CHECK(part.bulk.moisture_as_placed.unknown == 0);
    CHECK(part.bulk.moisture_as_placed.range.low < part.bulk.moisture_as_placed.range.high);
  }
}

TEST_CASE("a profile's choice is no range for a '?'") {
  const std::map<std::string, std::string> profiles{
      {"floor", "profile: {revision: 1}\nlayers: {substrate: {placed: damp}}\n"}};
  const std::string unknown =
      with(example_spec, "{mix: woodland, front: 5 cm, back: 8 cm}",
           "\n    mix: woodland\n    front: 5 cm\n    back: 8 cm\n    placed: ?");
  const Build b = built("use: [floor]\n" + unknown, profiles);
  REQUIRE(b.unknowns.size() == 1);
  CHECK(b.unknowns[0].shown == "dry–damp");
  CHECK(b.unknowns[0].from == "catalogue");
}

TEST_CASE("an unknown room stands for the profile's range") {
  const std::map<std::string, std::string> profiles{
      {"attic", "profile: {revision: 3}\nroom: {temperature: 10–35 °C}\n"}};
  const Build b =
      built("use: [attic]\nroom:\n  temperature: ?\n  humidity: ?\n" + example_spec, profiles);
  REQUIRE(b.unknowns.size() == 2);
  CHECK(b.unknowns[0].shown == "10–35 °C");
  CHECK(b.unknowns[0].from == "attic, revision 3");
  CHECK(b.room.temperature.range == Range<Celsius>{{10}, {35}});
  CHECK(b.unknowns[1].shown == "20–70 %");
  CHECK(b.unknowns[1].from == "catalogue");
}

TEST_CASE("values of profiles and defaults are listed with whom they are from") {
  const std::map<std::string, std::string> profiles{
      {"wet", "profile: {revision: 2}\nwater_area: {side: left, floor: 30 %, depth: 10 cm}\n"}};
  const Build b = built("use: [wet]\n" + example_spec, profiles);
  REQUIRE(assumed(b, "water_area.floor"));
  CHECK(assumed(b, "water_area.floor")->value == "30 %");
  CHECK(assumed(b, "water_area.floor")->from == "wet, revision 2");
  REQUIRE(assumed(b, "print.paper"));
  CHECK(assumed(b, "print.paper")->from == "default");
  CHECK(assumed(b, "build.revision")->value == "A");
  CHECK(b.identity.revision == "A");
  CHECK_FALSE(assumed(b, "build.slip"));  // nothing is made of it yet
  CHECK_FALSE(assumed(b, "layers.drainage.depth"));
}

TEST_CASE("the first animal says which rules the build follows") {
  const auto kind = [](const std::string& animal) {
    return built(example_spec + "animals: [{species: " + animal + "}]\n").kind;
  };
  CHECK(kind("tribolonotus-gracilis") == BuildKind::humid);
  CHECK(kind("pogona-vitticeps") == BuildKind::arid);
  CHECK(kind("salamandra-salamandra") == BuildKind::temperate);
  CHECK(kind("cynops-orientalis") == BuildKind::semi_aquatic);
  CHECK(kind("brachypelma-hamorii") == BuildKind::burrowing);
  CHECK(built(example_spec).kind == BuildKind::humid);
  CHECK(assumed(built(example_spec), "kind of build")->from == "default");
}

TEST_CASE("a former name of an animal becomes its present one") {
  const Build b = built(example_spec + "animals: [{species: litoria-caerulea, count: 3}]\n");
  REQUIRE(b.kept.size() == 1);
  CHECK(b.kept[0].facts.id == "ranoidea-caerulea");
  CHECK(b.kept[0].count == 3);
}

TEST_CASE("what stands takes floor and height by its kind") {
  const Build b = built(example_spec + R"(furnishings:
  - {id: log, kind: tube, length: 30 cm, diameter: 12 cm, at: [22 cm, 15 cm], stands_on: substrate}
  - {id: slab, kind: stone, at: [40 cm, 20 cm], width: 15 cm, depth: 10 cm, height: 5 cm,
     mass: 2.1 kg, stands_on: base}
  - {id: bowl, kind: water-bowl, at: [50 cm, 12 cm], diameter: 12 cm, depth: 3 cm}
  - {id: shelf, kind: ledge, at: [30 cm, 40 cm, 35 cm], width: 25 cm, depth: 10 cm,
     fixed_by: magnet}
  - {id: sun, kind: basking-spot, at: [40 cm, 20 cm], width: 15 cm, depth: 10 cm}
)");
  REQUIRE(b.standing.size() == 3);  // the shelf is fixed, the basking spot a place
  CHECK(b.standing[0].base.v == Approx(0.036));
  CHECK(b.standing[0].height == 12_cm);
  CHECK(b.standing[1].base.v == Approx(0.015));
  CHECK(b.standing[1].on_base);
  CHECK(b.standing[1].mass->v == Approx(2.1));
  CHECK(b.standing[2].height == 3_cm);
  CHECK_FALSE(b.standing[2].on_base);
  REQUIRE(assumed(b, "furnishings[2].stands_on"));
  CHECK(assumed(b, "furnishings[2].stands_on")->value == "substrate");
  CHECK(assumed(b, "furnishings[2].stands_on")->item == "bowl");
  REQUIRE(assumed(b, "furnishings[3].turned"));
  CHECK(assumed(b, "furnishings[3].turned")->item == "shelf");
}

TEST_CASE("things on the edge of the floor are in the tank") {
  const Build b = built(example_spec +
                        "plants:\n  - {species: ficus-pumila, at: [0 cm, 45 cm]}\n"
                        "  - {species: ficus-pumila, at: [60 cm, 0 cm]}\n");
  CHECK(b.standing.empty());
}

TEST_CASE("walls are as dense as the catalogue says") {
  CHECK(built(example_spec).enclosure.walls.density.v == 2500);
  const std::string glass = "material: glass";
  CHECK(built(with(example_spec, glass, "material: acrylic")).enclosure.walls.density.v == 1190);
}

TEST_CASE("a build prints itself as text") {
  const std::string once = dump(built(example_spec));
  CHECK(once.find("substrate woodland front 50 back 80 mm settling 0.12 hold-back 0") !=
        std::string::npos);
  CHECK(once.find("opening slot front at 150 mm gross 0.006 free 0.006 m2") != std::string::npos);
}
