// The calendar files of the examples, read by two readers that are not ours.
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

std::string quoted(const tree::fs::path& path) {
  return " '" + path.string() + '\'';
}

// What each reader counts, or complains of: Debian's python3-icalendar, and ical.js of the npm
// registry, which tests/run fetches.
std::vector<std::string> readings(const tree::fs::path& calendar) {
  const auto readers = tree::root / "tests/readers";
  const auto fetched = tree::root / "build/readers/node_modules/ical.js/dist/ical.js";
  return {heard_from("/usr/bin/python3" + quoted(readers / "read_calendar.py") + quoted(calendar)),
          heard_from("node" + quoted(readers / "read_calendar.mjs") + quoted(fetched) +
                     quoted(calendar))};
}

}  // namespace

TEST_CASE("readers from Debian and npm take the calendar of every example") {
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
    const auto said = readings(file.path());
    INFO(file.path().filename() << ": " << said[0] << ", " << said[1]);
    CHECK(std::atoi(said[0].c_str()) > 30);
    CHECK(said[0] == said[1]);
  }
  CHECK(calendars > 3);
  fs::remove_all(made);
}
