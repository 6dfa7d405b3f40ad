#include "catalogue/catalogue.h"

#include <catch2/catch.hpp>
#include <cmath>
#include <set>

#include "catalogue/living.h"
#include "world/world.h"

using namespace loamsheet;

namespace {

Outcome<Catalogue> real() {
  auto world = real_world();
  return read_catalogue(*world);
}

// A small catalogue in memory.
MemoryWorld small() {
  MemoryWorld world;
  const auto put = [&](const std::string& name, const std::string& text) {
    world.files["specs/catalogue/" + name + ".yaml"] = text;
  };
  put("sources", "sources:\n  book-1990: {title: \"A book\"}\n");
  put("light", "light:\n  low: {from: from memory, ppfd: 10–50}\nspectra: {}\n");
  put("currencies", "currencies:\n  cents: {from: book-1990, decimals: 2, codes: \"EUR USD\"}\n");
  put("materials",
      "materials:\n  grit:\n    name: grit\n    role: drainage\n    facts:\n"
      "      - {from: book-1990, voids: 40 %, field_capacity: 5 %, porosity: 45 %}\n");
  put("mixes", "mixes: {}\n");
  world.files["templates/placement.yaml"] =
      "soft:\n  light: {weight: 1, why: a}\n  humidity: {weight: 0, why: a}\n"
      "  habit: {weight: 0, why: a}\n  headroom: {weight: 0, why: a}\n";
  world.files["templates/tasks.yaml"] = "work: {}\ncare: {}\nreadiness: {}\n";
  world.files["templates/hazards.yaml"] = "hazards: {}\n";
  auto disk = real_world();
  world.files["templates/choosing.yaml"] =
      disk->read(disk->data("templates/choosing.yaml")).value();
  put("groups", "groups: {}\n");
  for (const char* shelf : {"animals", "plants", "crew"}) put(shelf, std::string(shelf) + ":\n");
  return world;
}

// What is said when all of it is read.
std::string said(const MemoryWorld& changed) {
  using Ids = std::vector<std::string>;
  MemoryWorld world = changed;
  const auto outcome = read_catalogue(world);
  std::vector<Diagnostic> messages = outcome.messages;
  for (const std::string& id : outcome.value ? outcome.value->materials.ids() : Ids{}) {
    const auto material = read_material(*outcome.value, id);
    messages.insert(messages.end(), material.messages.begin(), material.messages.end());
  }
  for (const std::string& id : outcome.value ? outcome.value->mixes.ids() : Ids{}) {
    const auto mix = read_mix(*outcome.value, id);
    messages.insert(messages.end(), mix.messages.begin(), mix.messages.end());
  }
  std::string out;
  for (const auto& d : messages) {
    out += d.where.file + ':' + std::to_string(d.where.line) + ':' +
           std::to_string(d.where.column) + ' ' + d.message + '\n';
  }
  return out;
}

void replace(MemoryWorld& world, const std::string& name, const std::string& from,
             const std::string& to) {
  std::string& text = world.files.at("specs/catalogue/" + name + ".yaml");
  const auto at = text.find(from);
  REQUIRE(at != std::string::npos);
  text.replace(at, from.size(), to);
}

}  // namespace

TEST_CASE("the catalogue reads without a word") {
  const auto c = real();
  REQUIRE(c.value);
  CHECK(c.messages.empty());
  CHECK(c.value->materials.entries.size() >= 40);
  CHECK(c.value->mixes.entries.size() >= 6);
  CHECK(c.value->light.size() == 3);
}

TEST_CASE("the ids that specs may count on are there") {
  const auto c = real();
  REQUIRE(c.value);
  for (const char* id : {"expanded-clay",
                         "scoria",
                         "pumice",
                         "gravel",
                         "fibreglass-mesh",
                         "polyester-mesh",
                         "geotextile",
                         "stainless-mesh",
                         "tree-fern-fibre",
                         "orchid-bark",
                         "coconut-husk",
                         "coir",
                         "peat",
                         "sphagnum",
                         "charcoal",
                         "leaf-mould",
                         "worm-castings",
                         "perlite",
                         "vermiculite",
                         "sand",
                         "loam",
                         "clay-powder",
                         "oak-leaves",
                         "beech-leaves",
                         "magnolia-leaves",
                         "sea-almond-leaves",
                         "maple-leaves",
                         "alder-leaves",
                         "cork-bark",
                         "driftwood",
                         "bamboo",
                         "slate",
                         "sandstone",
                         "foam",
                         "sheet-moss",
                         "organic-starter-feed",
                         "glass",
                         "acrylic",
                         "pvc",
                         "wood"}) {
    INFO(id);
    CHECK(c.value->materials.has(id));
  }
  for (const char* id :
       {"woodland", "tropical-bark", "temperate-leaf", "arid-sand", "burrow-clay", "bog"}) {
    INFO(id);
    CHECK(c.value->mixes.has(id));
  }
  for (const char* id : {"peperomia-obtusifolia", "ficus-pumila", "ficus-pumila-minima",
                         "aeschynanthus-radicans", "fittonia-albivenis", "peperomia-caperata"}) {
    INFO(id);
    CHECK(c.value->plants.has(id));
  }
  CHECK(c.value->animals.has("tribolonotus-gracilis"));
  CHECK(c.value->crew.has("folsomia-candida"));
  CHECK(c.value->crew.has("trichorhina-tomentosa"));
}

TEST_CASE("what a layer needs of its materials is filled") {
  const auto c = real();
  REQUIRE(c.value);
  for (const std::string& id : c.value->materials.ids()) {
    INFO(id);
    const auto read = read_material(*c.value, id);
    REQUIRE(read.value);
    CHECK(read.messages.empty());
    const Material& m = *read.value;
    const bool bulk = m.role == "drainage" || m.role == "substrate" || m.role == "litter";
    if (bulk) {
      CHECK(m.dry_density);
      CHECK(m.porosity);
      CHECK(m.voids);
      CHECK(m.field_capacity);
      CHECK(m.moisture_dry);
      CHECK(m.moisture_damp);
      CHECK(m.settling);
    }
    if (m.role == "separator") {
      CHECK(m.areal_kg_m2);
      CHECK(m.rusts);
    }
    if (m.role == "wall") CHECK(m.dry_density);
    if (m.role == "litter") CHECK_FALSE(m.decay.empty());
  }
}

TEST_CASE("mixes for humid builds are mostly coarse organic pieces") {
  const auto c = real();
  REQUIRE(c.value);
  for (const std::string& id : c.value->mixes.ids()) {
    INFO(id);
    const auto mix = read_mix(*c.value, id).value;
    REQUIRE(mix);
    if (mix->build_kind != "humid") continue;
    double coarse = 0, all = 0;
    for (const auto& part : mix->parts) {
      all += part.parts;
      if (read_material(*c.value, part.material).value->coarse) coarse += part.parts;
    }
    CHECK(coarse / all > 0.6);
  }
}

TEST_CASE("every living thing can be read") {
  const auto c = real();
  REQUIRE(c.value);
  for (const auto& id : c.value->plants.ids()) {
    const auto p = read_plant(*c.value, id);
    INFO(id);
    REQUIRE(p.value);
    CHECK(p.messages.empty());
    CHECK(p.value->name == c.value->plants.at(id).common_name);
    CHECK(p.value->habit);
    CHECK(c.value->light.contains(p.value->light->value));
    CHECK(p.value->coldest->value < p.value->warmest->value);
    CHECK(p.value->robustness);
    CHECK_FALSE(p.value->hazards.empty());
  }
  for (const auto& id : c.value->animals.ids()) {
    const auto a = read_animal(*c.value, id);
    INFO(id);
    REQUIRE(a.value);
    CHECK(a.messages.empty());
    CHECK(a.value->build_kind);
    CHECK(a.value->floor_length->value.low >= a.value->floor_width->value.low);
    CHECK(a.value->headroom);
    CHECK(a.value->wear);
  }
  for (const auto& id : c.value->crew.ids()) {
    const auto s = read_crew(*c.value, id);
    INFO(id);
    REQUIRE(s.value);
    CHECK(s.messages.empty());
    CHECK(s.value->group);
  }
}

TEST_CASE("facts of one plant stand with their own origins") {
  const auto c = real();
  const auto p = read_plant(*c.value, "ficus-pumila");
  REQUIRE(p.value);
  CHECK(p.value->height->value == Range<Millimetres>{{2400}, {4600}});
  CHECK(p.value->height->origin.published());
  CHECK(p.value->robustness->origin.name == "common practice");
  CHECK(p.value->family->origin.name == "from memory");
  CHECK(p.value->hazards[0].kind == "latex-sap");
}

TEST_CASE("an entry's mistakes are reported where they stand in the file") {
  MemoryWorld world = small();
  world.files["specs/catalogue/plants.yaml"] =
      "# plants\nplants:\n  a-one:\n    name: one\n    facts:\n      - {from: book-1990}\n"
      "  b-two:\n    name: two\n    facts:\n      - {from: book-1991, robustness: 9}\n";
  const auto c = read_catalogue(world);
  REQUIRE(c.value);
  CHECK(read_plant(*c.value, "a-one").value);
  const auto two = read_plant(*c.value, "b-two");
  CHECK_FALSE(two.value);
  REQUIRE(two.messages.size() == 1);
  CHECK(two.messages[0].where.file == "specs/catalogue/plants.yaml");
  CHECK(two.messages[0].where.line == 10);
  CHECK(two.messages[0].where.column == 39);
}

TEST_CASE("a source that is not on the list is an error with the nearest") {
  MemoryWorld world = small();
  replace(world, "materials", "book-1990", "book-1991");
  const auto c = read_catalogue(world);
  REQUIRE(c.value);
  const auto grit = read_material(*c.value, "grit");
  REQUIRE(grit.messages.size() == 1);
  CHECK(grit.messages[0].message == "unknown source 'book-1991'");
  CHECK(grit.messages[0].where.line == 6);
  CHECK(grit.messages[0].hint == "did you mean 'book-1990'?");
  CHECK(grit.messages[0].edit->text == "book-1990");
}

TEST_CASE("pores add up within one per cent") {
  MemoryWorld world = small();
  replace(world, "materials", "porosity: 45 %", "porosity: 46 %");
  CHECK(said(world).empty());
  replace(world, "materials", "porosity: 46 %", "porosity: 46.1 %");
  CHECK(said(world) ==
        "specs/catalogue/materials.yaml:2:3 pores of 'grit' do not add up: voids and field "
        "capacity are 45 %, porosity is 46.1 %\n");
}

TEST_CASE("a fact is stated once") {
  MemoryWorld world = small();
  world.files["specs/catalogue/materials.yaml"] += "      - {from: from memory, voids: 41 %}\n";
  CHECK(said(world) ==
        "specs/catalogue/materials.yaml:7:29 'voids' is stated by an earlier line already\n");
}

TEST_CASE("a mix of an unknown material is an error") {
  MemoryWorld world = small();
  world.files["specs/catalogue/mixes.yaml"] =
      "mixes:\n  m:\n    name: m\n    for: arid\n    from: common practice\n"
      "    parts: {grit: 1, gravle: 2}\n";
  CHECK(said(world) == "specs/catalogue/mixes.yaml:6:22 unknown material 'gravle' in a mix\n");
}

TEST_CASE("a shelf of another layout is an error, not a missing entry") {
  MemoryWorld world = small();
  world.files["specs/catalogue/crew.yaml"] = "crow: {}\n";
  world.files["specs/catalogue/mixes.yaml"] = "mixes: [woodland]\n";
  CHECK(said(world) ==
        "specs/catalogue/mixes.yaml:1:1 this is not the section that the file should hold\n"
        "specs/catalogue/crew.yaml:1:1 this is not the section that the file should hold\n");
}

TEST_CASE("a shelf's file is YAML, however it is laid out, and is read as such") {
  MemoryWorld world = small();
  world.files["specs/catalogue/crew.yaml"] =
      "crew: {one-louse: {name: 'a louse', synonyms: [old-louse, \"older-louse\"],\n"
      "  facts: [{from: from memory, group: isopod}]}}\n";
  const auto c = read_catalogue(world);
  REQUIRE(c.value);
  CHECK(c.value->crew.at("one-louse").common_name == "a louse");
  CHECK(c.value->crew.renamed("older-louse") == "one-louse");
  CHECK(read_crew(*c.value, "one-louse").value->group->value == "isopod");
  world.files["specs/catalogue/crew.yaml"] = "crew: {a: {}, a: {}}\n";
  CHECK(said(world) == "specs/catalogue/crew.yaml:1:15 the key 'a' is given twice\n");
}

TEST_CASE("a file that is not there is a fault of the installation") {
  MemoryWorld world = small();
  world.files.erase("specs/catalogue/mixes.yaml");
  const auto c = read_catalogue(world);
  CHECK_FALSE(c.value);
  REQUIRE(c.messages.size() == 1);
  CHECK(c.messages[0].fault == Fault::file);
}

TEST_CASE("the body of every animal's group is known") {
  const auto c = real();
  for (const auto& id : c.value->animals.ids()) {
    INFO(id);
    const auto animal = read_animal(*c.value, id);
    REQUIRE(animal.value);
    CHECK(animal.value->body.skin_takes_up);
    CHECK(animal.value->body.thickness);
  }
}

TEST_CASE("every source is there because a fact is from it") {
  auto world = real_world();
  const auto c = real();
  std::string all = world->read(world->data("templates/hazards.yaml")).value();
  for (const char* name :
       {"materials", "mixes", "light", "animals", "plants", "crew", "groups", "currencies"}) {
    all += world->read(world->data(std::string("specs/catalogue/") + name + ".yaml")).value();
  }
  for (const std::string& id : c.value->sources.ids()) {
    INFO(id);
    CHECK(all.find("from: " + id) != std::string::npos);
    const auto source = read_source(*c.value, id).value;
    REQUIRE(source);
    CHECK_FALSE(source->title.empty());
  }
}
