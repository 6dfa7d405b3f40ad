// A language is compared with English, and English with what the program was built with.
#include "catalogue/language.h"

#include <catch2/catch.hpp>

#include "catalogue/style.h"
#include "catalogue/wording.h"
#include "read/compiled.h"
#include "world/world.h"

using namespace loamsheet;

namespace {

// English in two files, and a language that says the same.
MemoryWorld whole() {
  MemoryWorld world;
  for (const std::string folder : {"templates/en/", "templates/qx/"}) {
    world.files[folder + "layers.yaml"] =
        "layers.heading: \"Layers\"\nlayers.spread: \"Spread {volume:dry} of {material}.\"\n";
    world.files[folder + "units.yaml"] =
        "units.decimal: \".\"\nunits.range: \"{low}–{high}\"\nunits.volume-dry: \"below 1: .1 L; "
        ".0 L\"\nunits.date: \"{day} {month}\"\n";
  }
  return world;
}

void replace(MemoryWorld& world, const std::string& name, const std::string& from,
             const std::string& to) {
  std::string& text = world.files.at("templates/" + name + ".yaml");
  REQUIRE(text.find(from) != std::string::npos);
  text.replace(text.find(from), from.size(), to);
}

std::string said(MemoryWorld world, const std::string& language = "qx") {
  const auto words = read_wording(world, language, UnitSystem::metric);
  CHECK(words.value.has_value() == words.messages.empty());
  for (const Diagnostic& d : words.messages) CHECK(d.fault == Fault::file);
  return render(words.messages, {});
}

// What the build would have compiled.
void compile_all(MemoryWorld& world) {
  std::vector<YamlFilePtr> files;
  for (const auto& [name, text] : world.files) {
    files.push_back(std::make_shared<const YamlFile>(name, text));
  }
  world.compiled_files = std::make_shared<const std::string>(compile(files));
}

}  // namespace

TEST_CASE("a whole language is read") {
  CHECK(said(whole()).empty());
  CHECK(said(whole(), "en").empty());
}

TEST_CASE("a sentence that a language lacks is named with what English says") {
  MemoryWorld world = whole();
  replace(world, "qx/layers", "layers.heading: \"Layers\"\n", "");
  CHECK(said(world) ==
        "templates/qx/layers.yaml: error: has no 'layers.heading'\n"
        "expected: a line like layers.heading: \"Layers\"\n");
}

TEST_CASE("a file that a language lacks, or has alone, is named") {
  MemoryWorld world = whole();
  world.files.erase("templates/qx/layers.yaml");
  world.files["templates/qx/lawyers.yaml"] = "lawyers.heading: \"Layers\"\n";
  CHECK(said(world) ==
        "templates/qx/lawyers.yaml: error: English has no file of this name\n"
        "templates/qx/layers.yaml: error: cannot be read\n"
        "hint: the installation is not complete; it should hold templates/qx/layers.yaml\n");
}

TEST_CASE("a slot that is missing or misspelt is named") {
  MemoryWorld world = whole();
  replace(world, "qx/layers", "{material}", "{materiel}");
  CHECK(said(world) ==
        "templates/qx/layers.yaml:2:1: error: 'layers.spread' has an unknown slot {materiel}\n"
        "expected: {material}, {volume}\n"
        "hint: did you mean {material}?\n"
        "templates/qx/layers.yaml:2:1: error: 'layers.spread' has no {material}\n"
        "expected: {material}, {volume}\n");
  replace(world, "qx/layers", "Layers", "Layers {of}");
  CHECK(said(world).find("'layers.heading' has an unknown slot {of}\nexpected: no slots\n") !=
        std::string::npos);
}

TEST_CASE("a sentence that English does not know is an error with the nearest") {
  MemoryWorld world = whole();
  world.files["templates/qx/layers.yaml"] += "layers.headings: \"Layers\"\n";
  CHECK(said(world) ==
        "templates/qx/layers.yaml:3:1: error: there is no sentence 'layers.headings' in "
        "templates/en/layers.yaml\n"
        "hint: did you mean 'layers.heading'?\n");
}

TEST_CASE("a language has its own dates and forms, and no form that its units lack") {
  MemoryWorld world = whole();
  replace(world, "qx/units", "{day} {month}", "{iso}");
  replace(world, "qx/units", "units.date", "units.volume-loose: \".0 L\"\nunits.date");
  replace(world, "qx/layers", "{volume:dry}", "{volume:loose}");
  CHECK(said(world).empty());
  replace(world, "qx/layers", "{volume:loose}", "{volume:lose}");
  CHECK(said(world) ==
        "templates/qx/layers.yaml:2:1: error: 'layers.spread' asks for {volume:lose}, a form that "
        "units.yaml lacks\n");
}

TEST_CASE("a part of a date that there is not, and an amount that is not one, are errors") {
  MemoryWorld world = whole();
  replace(world, "qx/units", "{day}", "{dae}");
  replace(world, "qx/units", "below 1:", "below one:");
  const std::string all = said(world);
  CHECK(all.find("'units.date' has an unknown slot {dae}\n") != std::string::npos);
  CHECK(all.find("'units.volume-dry' is not steps of a unit\n") != std::string::npos);
}

TEST_CASE("English lacks nothing that it had when the program was built, and may have more") {
  MemoryWorld world = whole();
  compile_all(world);
  CHECK(said(world, "en").empty());
  world.files["templates/en/layers.yaml"] += "layers.more: \"More\"\n";
  world.files["templates/en/water.yaml"] = "water.heading: \"Water\"\n";
  replace(world, "en/layers", "Layers", "The layers");
  CHECK(said(world, "en").empty());
  replace(world, "en/layers", "layers.heading", "layers.head");
  replace(world, "en/layers", " of {material}", "");
  world.files.erase("templates/en/units.yaml");
  CHECK(said(world, "en") ==
        "templates/en/layers.yaml: error: has no 'layers.heading'\n"
        "expected: a line like layers.heading: \"Layers\"\n"
        "templates/en/layers.yaml:2:1: error: 'layers.spread' has no {material}\n"
        "expected: {material}, {volume}\n"
        "templates/en/units.yaml: error: cannot be read\n"
        "hint: the installation is not complete; it should hold templates/en/units.yaml\n");
}

TEST_CASE("the style lacks no measure that it had when the program was built") {
  MemoryWorld world;
  world.files["templates/style.yaml"] = "body.size: 9.5\nrule.grey: 0.5\n";
  compile_all(world);
  world.files["templates/style.yaml"] = "body.size: 10\nrule.gray: 0.5\n";
  const auto style = read_style(world, false);
  CHECK_FALSE(style.value);
  CHECK(render(style.messages, {}) ==
        "templates/style.yaml: error: has no 'rule.grey'\n"
        "hint: the installation is not complete; put it back\n");
}
