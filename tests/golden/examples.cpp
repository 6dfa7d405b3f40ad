#include "examples.h"

#include <algorithm>
#include <catch2/catch.hpp>
#include <cstdlib>
#include <fstream>
#include <sstream>

#include "world/world.h"

namespace loamsheet::tests {
namespace {

namespace fs = std::filesystem;

template <class T>
T given(Outcome<T> outcome) {
  INFO(render(outcome.messages, nullptr));
  REQUIRE(outcome);
  return std::move(*outcome.value);
}

Example made(const std::string& name) {
  const auto world = real_world();
  Planned planned = given(plan_spec(*world, "specs/" + name + ".yaml", ""));
  Drafted drafted = given(draft(*world, planned, {}));
  auto files = given(make_files(*world, planned, {}));
  std::string stem = file_stem(planned.build, false);
  return {name, std::move(stem), std::move(planned), std::move(drafted), std::move(files)};
}

}  // namespace

const std::string& Example::bytes(const std::string& ending) const {
  const auto found = std::find_if(files.begin(), files.end(), [&](const OutputFile& file) {
    return file.name == stem + ending;
  });
  REQUIRE(found != files.end());
  return found->bytes;
}

const std::vector<Example>& examples() {
  static const std::vector<Example> all = [] {
    std::vector<Example> made_of;
    for (const char* name :
         {"dry-wash", "fern-ravine", "heron-canopy", "moss-alcove", "short-order"}) {
      made_of.push_back(made(name));
    }
    return made_of;
  }();
  return all;
}

const Example& example(const std::string& name) {
  const auto& all = examples();
  return *std::find_if(all.begin(), all.end(), [&](const Example& e) { return e.name == name; });
}

std::string slurp(const fs::path& path) {
  std::ostringstream text;
  text << std::ifstream(path, std::ios::binary).rdbuf();
  return text.str();
}

fs::path scratch(const std::string& name) {
  return fs::temp_directory_path() / ("loamsheet-golden-" + name);
}

bool rewriting() {
  const bool asked = std::getenv("LOAMSHEET_REWRITE") != nullptr;
  if (asked && std::getenv("CI") != nullptr) FAIL("goldens are not rewritten in CI");
  return asked;
}

void hold(const std::string& now, const std::string& golden) {
  const fs::path path = fs::path(LOAMSHEET_SOURCE "/tests/golden/expected") / golden;
  if (rewriting()) std::ofstream(path, std::ios::binary) << now;
  INFO(golden);
  CHECK(now == slurp(path));
}

}  // namespace loamsheet::tests
