// Whole documents: the example of the design, short forms, tables of one's own.
#include <catch2/catch.hpp>

#include "read_helpers.h"

using namespace loamsheet;

TEST_CASE("the example of the design reads without a problem") {
  MemoryWorld world = world_with_profiles();
  world.files["spec.yaml"] = file_text(source_path("tests/cases/design-example.yaml"));
  const auto read = read_spec(world, "spec.yaml", "");
  CHECK(rendered(world, read.messages).empty());
  REQUIRE(read);
  const Node& root = read.value->root;
  CHECK(root.text("build.reference") == "TT-0142");
  CHECK(iso(*root.date("build.plant_on")) == "2026-03-07");
  CHECK(root.number("enclosure.openings[0].over[1][1]") == 450);
  CHECK(root.number("lamps[2].uvi[1][0]") == 300);
  CHECK(root.number("lamps[2].uvi[1][1]") == 1.4);
  CHECK(root.yes("heaters[0].thermostat") == true);
  CHECK(root.number("amendments[0].label_rate") == 3.75);
  CHECK(root.number("amendments[0].strength") == 0.5);
  CHECK(root.number("plants[3].choose.budget") == 60);
  CHECK(root.text("plants[4].species") == "fittonia-albivenis");
  CHECK(root.number("quote.rate") == 32);
  CHECK(root.number("mixes.woodland.tree-fern-fibre") == 4);
  CHECK(read.value->profiles.size() == 3);
  CHECK(read.value->text == world.files["spec.yaml"]);
}

TEST_CASE("the short form of a plant has the places of its two halves") {
  const auto read = read_small("plants: [12 fittonia-albivenis]\n");
  REQUIRE(read);
  const Node* species = read.value->root.find("plants[0].species");
  const Node* count = read.value->root.find("plants[0].count");
  REQUIRE((species && count));
  CHECK(count->where == Span{"spec.yaml", 3, 10, 2});
  CHECK(species->where == Span{"spec.yaml", 3, 13, 18});
  CHECK(count->typed == "12");
  CHECK(read.value->root.number("plants[0].count") == 12);
}

TEST_CASE("a typed range keeps what was typed") {
  const auto read = read_small("room: {temperature: [17 °C, 26 °C], humidity: 35–60 %}\n");
  REQUIRE(read);
  const Node* room = read.value->root.find("room");
  CHECK(room->range("temperature") == Range<double>{17, 26});
  CHECK(room->find("temperature")->typed == "[17 °C, 26 °C]");
  CHECK(room->find("humidity")->typed == "35–60 %");
  CHECK(room->find("humidity")->key == find_key(spec_keys(), "room.humidity"));
}

TEST_CASE("a file that cannot be read is a fault of the file") {
  MemoryWorld world;
  const auto read = read_spec(world, "gone.yaml", "");
  REQUIRE(read.messages.size() == 1);
  CHECK(read.messages[0].fault == Fault::file);
  CHECK(rendered(world, read.messages) ==
        "gone.yaml: error: the file cannot be read\nhint: check its name and whether it may be "
        "read\n");
}

TEST_CASE("a document may have a table of its own, with free names at its top") {
  const Key rows[] = {
      {.path = "*", .kind = Kind::group},
      {.path = "*.density", .kind = Kind::density, .flags = flag::range_ok | flag::required},
  };
  const auto read =
      read_document("peat: {density: 80–120 kg/m3}\nsand: {density: 1500 kg/m3}\n", "m.yaml", rows);
  REQUIRE(read);
  CHECK(read.value->range("peat.density") == Range<double>{80, 120});
  CHECK(read.value->range("sand.density") == Range<double>{1500, 1500});
  CHECK_FALSE(read_document("peat: {}\n", "m.yaml", rows));
}

TEST_CASE("a document may be a list") {
  const Key rows[] = {
      {.path = "[]", .kind = Kind::group},
      {.path = "[].given", .kind = Kind::length},
  };
  const auto read = read_document("- {given: 5 cm}\n- {given: 6 cm}\n", "l.yaml", rows);
  REQUIRE(read);
  CHECK(read.value->number("[1].given") == 60);
}

TEST_CASE("more than two hundred problems are cut short") {
  std::string text;
  for (int i = 0; i < 300; ++i) text += "k" + std::to_string(i) + ": 1\n";
  const auto read = read_document(text, "d.yaml", spec_keys());
  CHECK(read.messages.size() == 201);
  CHECK(read.messages.back().message == "there are more problems after this place");
}

TEST_CASE("the merged spec prints itself, each place after the one before") {
  const auto read = read_small("room: {humidity: ?}\nplants: [2 ficus-pumila]\n");
  REQUIRE(read);
  const std::string text = dump(*read.value);
  CHECK(
      text.starts_with("spec v2\nprofile tank-90x45x60, revision 1\n"
                       "profile humid-sloped, revision 2\n"));
  CHECK(text.find("  humidity ? @+1:18\n") != std::string::npos);
  CHECK(text.find("  height 60 cm @+1:11 from tank-90x45x60, revision 1\n") != std::string::npos);
}
