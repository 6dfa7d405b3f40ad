// What the example specs give, stage by stage, against the texts in expected/; and the files in
// out-examples/ against what the specs make today. LOAMSHEET_REWRITE=1 writes them anew, but never
// where CI is set. Places in the spec, in a figure or on a page are held for one spec alone.
#include <algorithm>
#include <catch2/catch.hpp>
#include <cstdlib>
#include <fstream>

#include "check/check.h"
#include "cli/cli.h"
#include "compose/compose.h"
#include "examples.h"
#include "layout/layout.h"
#include "world/world.h"

using namespace loamsheet;
using namespace loamsheet::tests;

namespace {

namespace fs = std::filesystem;

const fs::path source = LOAMSHEET_SOURCE, kept = source / "out-examples";

std::string layout_of(const std::string& pdf) {
  const fs::path file = scratch("layout.pdf"), text = scratch("layout.txt");
  std::ofstream(file, std::ios::binary) << pdf;
  REQUIRE(std::system(("pdftotext -layout " + file.string() + ' ' + text.string()).c_str()) == 0);
  const std::string words = slurp(text);
  fs::remove(file);
  fs::remove(text);
  return words;
}

// Another machine's libraries may write other bytes, but the same words at the same places.
bool reads_alike(const std::string& a, const std::string& b) {
  return a == b || layout_of(a) == layout_of(b);
}

// Pictures are for the reader of the repository; they are made but not compared.
void rewrite(const Example& e) {
  for (const OutputFile& file : e.files) {
    std::ofstream(kept / file.name, std::ios::binary) << file.bytes;
  }
  const std::string line = "pdftoppm -r 72 -png -singlefile -f 1 -l 1 '" +
                           (kept / (e.stem + ".pdf")).string() + "' '" + (kept / e.stem).string() +
                           "'";
  REQUIRE(std::system(line.c_str()) == 0);
}

std::vector<std::string> names_in(const fs::path& folder) {
  std::vector<std::string> names;
  for (const auto& entry : fs::directory_iterator(folder)) {
    names.push_back(entry.path().filename().string());
  }
  std::sort(names.begin(), names.end());
  return names;
}

}  // namespace

TEST_CASE("every stage of the example specs gives what it gave") {
  for (const Example& e : examples()) {
    hold(dump(e.planned.build), e.name + ".build.txt");
    hold(dump(e.planned.build, e.planned.plan), e.name + ".plan.txt");
    hold(dump(e.drafted.sheet), e.name + ".sheet.txt");
  }
  const Example& placed = example("fern-ravine");
  hold(dump(placed.planned.spec), placed.name + ".spec.txt");
  hold(dump(placed.drafted.figures), placed.name + ".figures.txt");
  hold(dump(placed.drafted.pages), placed.name + ".pages.txt");
}

TEST_CASE("the files in out-examples are what the specs make today") {
  std::vector<std::string> names;
  for (const Example& e : examples()) {
    if (rewriting()) rewrite(e);
    for (const char* ending : {".ics", ".json", ".pdf", ".png"}) names.push_back(e.stem + ending);
    INFO(e.stem);
    CHECK(e.bytes(".json") == slurp(kept / (e.stem + ".json")));
    CHECK(e.bytes(".ics") == slurp(kept / (e.stem + ".ics")));
    CHECK(reads_alike(e.bytes(".pdf"), slurp(kept / (e.stem + ".pdf"))));
  }
  std::sort(names.begin(), names.end());
  CHECK(names_in(kept) == names);
}

TEST_CASE("a batch made from another folder, two at once, gives the same bytes") {
  const fs::path folder = scratch("batch");
  fs::remove_all(folder);
  std::vector<std::string> arguments{"make", "--quiet", "--jobs", "2", "-o", folder.string()};
  for (const Example& e : examples()) {
    arguments.push_back((source / "specs" / (e.name + ".yaml")).string());
  }
  std::string err;
  const Terminal terminal{[](std::string_view) {}, [&](std::string_view text) { err += text; }};
  const int code = run(arguments, *real_world(), terminal);
  INFO(err);
  CHECK(code <= 1);
  for (const Example& e : examples()) {
    for (const OutputFile& file : e.files) {
      INFO(file.name);
      CHECK(slurp(folder / file.name) == file.bytes);
    }
  }
  fs::remove_all(folder);
}
