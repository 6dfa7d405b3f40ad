// What the example specs give, stage by stage, against the texts in expected/; and the files in
// out-examples/ against what the specs make today. LOAMSHEET_REWRITE=1 writes them anew, but never
// where CI is set.
#include <catch2/catch.hpp>
#include <cstdlib>
#include <filesystem>
#include <fstream>
#include <sstream>
#include <string>
#include <vector>

#include "cli/cli.h"
#include "world/world.h"

namespace {

namespace fs = std::filesystem;

const fs::path source = LOAMSHEET_SOURCE;
const std::vector<std::string> specs{"dry-wash", "fern-ravine", "heron-canopy", "moss-alcove",
                                     "short-order"};

std::string slurp(const fs::path& path) {
  std::ostringstream text;
  text << std::ifstream(path, std::ios::binary).rdbuf();
  return text.str();
}

bool rewriting() {
  const bool asked = std::getenv("LOAMSHEET_REWRITE") != nullptr;
  if (asked && std::getenv("CI") != nullptr) FAIL("goldens are not rewritten in CI");
  return asked;
}

std::string said_by(const std::vector<std::string>& arguments) {
  std::string out, err;
  const loamsheet::Terminal terminal{[&](std::string_view text) { out += text; },
                                     [&](std::string_view text) { err += text; }};
  const int code = loamsheet::run(arguments, *loamsheet::real_world(), terminal);
  INFO(err);
  CHECK(code <= 1);
  return out;
}

void compare(const std::string& now, const fs::path& golden) {
  if (rewriting()) std::ofstream(golden, std::ios::binary) << now;
  INFO(golden.filename());
  CHECK(now == slurp(golden));
}

std::string text_of_pdf(const fs::path& pdf) {
  const fs::path text = fs::temp_directory_path() / ("loamsheet-" + pdf.stem().string() + ".txt");
  const std::string line = "pdftotext -layout '" + pdf.string() + "' '" + text.string() + "'";
  REQUIRE(std::system(line.c_str()) == 0);
  const std::string words = slurp(text);
  fs::remove(text);
  return words;
}

std::vector<std::string> stems(const fs::path& folder) {
  std::vector<std::string> found;
  for (const auto& entry : fs::directory_iterator(folder)) {
    if (entry.path().extension() == ".pdf") found.push_back(entry.path().stem().string());
  }
  std::sort(found.begin(), found.end());
  return found;
}

void make_all(const fs::path& folder) {
  std::vector<std::string> arguments{"make", "--quiet", "-o", folder.string()};
  for (const auto& spec : specs) arguments.push_back("specs/" + spec + ".yaml");
  said_by(arguments);
}

// Pictures are for the reader of the repository; they are made but not compared.
void rewrite_examples(const fs::path& made, const fs::path& kept) {
  for (const auto& entry : fs::directory_iterator(made)) {
    fs::copy_file(entry.path(), kept / entry.path().filename(),
                  fs::copy_options::overwrite_existing);
  }
  for (const auto& stem : stems(kept)) {
    const std::string line = "pdftoppm -r 72 -png -singlefile -f 1 -l 1 '" +
                             (kept / (stem + ".pdf")).string() + "' '" + (kept / stem).string() +
                             "'";
    REQUIRE(std::system(line.c_str()) == 0);
  }
}

}  // namespace

TEST_CASE("every stage of the example specs gives what it gave") {
  for (const auto& spec : specs) {
    for (const std::string stage : {"spec", "build", "plan", "figures", "sheet", "pages"}) {
      const fs::path golden = source / "tests/golden/expected" / (spec + '.' + stage + ".txt");
      compare(said_by({"check", "specs/" + spec + ".yaml", "--emit", stage}), golden);
    }
  }
}

TEST_CASE("the files in out-examples are what the specs make today") {
  const fs::path made = fs::temp_directory_path() / "loamsheet-examples",
                 kept = source / "out-examples";
  fs::remove_all(made);
  make_all(made);
  if (rewriting()) rewrite_examples(made, kept);
  REQUIRE(stems(made).size() == specs.size());
  CHECK(stems(made) == stems(kept));
  for (const auto& stem : stems(made)) {
    INFO(stem);
    CHECK(slurp(made / (stem + ".json")) == slurp(kept / (stem + ".json")));
    CHECK(slurp(made / (stem + ".ics")) == slurp(kept / (stem + ".ics")));
    CHECK(text_of_pdf(made / (stem + ".pdf")) == text_of_pdf(kept / (stem + ".pdf")));
    CHECK(fs::exists(kept / (stem + ".png")));
  }
  fs::remove_all(made);
}

TEST_CASE("the same spec gives the same bytes") {
  const fs::path first = fs::temp_directory_path() / "loamsheet-first",
                 second = fs::temp_directory_path() / "loamsheet-second";
  make_all(first);
  make_all(second);
  size_t compared = 0;
  for (const auto& entry : fs::directory_iterator(first)) {
    INFO(entry.path().filename());
    CHECK(slurp(entry.path()) == slurp(second / entry.path().filename()));
    ++compared;
  }
  CHECK(compared == 3 * specs.size());
  fs::remove_all(first);
  fs::remove_all(second);
}
