// The calendar files of the examples, read by a reader that is not ours.
#include <catch2/catch.hpp>
#include <cstdio>
#include <memory>

#include "cli/cli.h"
#include "tree.h"
#include "world/world.h"

using namespace loamsheet;

namespace {

struct ClosePipe {
  void operator()(FILE* pipe) const { pclose(pipe); }
};

std::string heard_from(const std::string& line) {
  const std::unique_ptr<FILE, ClosePipe> pipe(popen((line + " 2>&1").c_str(), "r"));
  REQUIRE(pipe);
  std::string said;
  for (int c; (c = std::fgetc(pipe.get())) != EOF;) said += static_cast<char>(c);
  return said;
}

}  // namespace

TEST_CASE("a reader from Debian takes the calendar of every example") {
  namespace fs = std::filesystem;
  const fs::path made = fs::temp_directory_path() / "loamsheet-calendars";
  fs::remove_all(made);
  std::vector<std::string> arguments{"make", "--quiet", "-o", made.string()};
  for (const auto& spec : tree::files("specs", {".yaml"})) {
    if (spec.parent_path() == tree::root / "specs") arguments.push_back(spec.string());
  }
  const Terminal terminal{[](std::string_view) {}, [](std::string_view) {}};
  CHECK(run(arguments, *real_world(), terminal) <= 1);
  int calendars = 0;
  for (const auto& file : fs::directory_iterator(made)) {
    if (file.path().extension() != ".ics") continue;
    ++calendars;
    const std::string script = (tree::root / "tests/rules/read_calendar.py").string();
    const std::string said =
        heard_from("/usr/bin/python3 '" + script + "' '" + file.path().string() + "'");
    INFO(file.path().filename() << ": " << said);
    CHECK(std::atoi(said.c_str()) > 30);
  }
  CHECK(calendars > 3);
  fs::remove_all(made);
}
