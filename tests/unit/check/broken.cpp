// Each tests/cases/broken-check/NAME.yaml is a spec that reads but does not hold; NAME.txt is all
// that check must say of it. Where every error offers an edit, the mended spec must pass.
#include <algorithm>
#include <catch2/catch.hpp>
#include <filesystem>

#include "base/text.h"
#include "catalogue/catalogue.h"
#include "check/check.h"
#include "read/read.h"
#include "world/world.h"

using namespace loamsheet;

namespace {

const std::string folder = "tests/cases/broken-check";

std::string absolute(const std::string& name) {
  return LOAMSHEET_SOURCE "/" + folder + '/' + name;
}

struct Said {
  bool passed = false;
  std::vector<Diagnostic> messages;
};

// The paths of messages are those of the repository, wherever it lies.
Said say(const std::string& text, const std::string& name, const Catalogue& catalogue) {
  MemoryWorld world;
  world.files[folder + '/' + name] = text;
  auto spec = read_spec(world, folder + '/' + name, "");
  REQUIRE(spec.messages.empty());
  auto build = check(*spec.value, catalogue);
  return {build.value.has_value(), std::move(build.messages)};
}

std::string line_of(const std::string& text, int number) {
  const auto lines = split(text, '\n');
  return number <= static_cast<int>(lines.size()) ? lines[static_cast<size_t>(number - 1)] : "";
}

std::string mended(const std::string& text, std::vector<Diagnostic> messages) {
  auto lines = split(text, '\n');
  std::stable_sort(messages.begin(), messages.end(), [](const auto& a, const auto& b) {
    return a.where.column > b.where.column;  // from the right, so that earlier columns stay
  });
  for (const auto& d : messages) {
    if (!d.edit) continue;
    std::string& line = lines[static_cast<size_t>(d.edit->where.line - 1)];
    const int from = d.edit->where.column - 1, to = from + d.edit->where.length;
    line = slice(line, 0, from) + d.edit->text + slice(line, to, code_points(line) - to);
  }
  return join(lines, "\n");
}

bool all_editable(const std::vector<Diagnostic>& messages) {
  return std::all_of(messages.begin(), messages.end(),
                     [](const Diagnostic& d) { return d.edit.has_value(); });
}

}  // namespace

TEST_CASE("broken specs are told apart, whole message by whole message") {
  auto world = real_world();
  const auto catalogue = read_catalogue(*world);
  REQUIRE(catalogue.value);
  int cases = 0, mendable = 0;
  for (const std::string& name : world->list(LOAMSHEET_SOURCE "/" + folder)) {
    if (!name.ends_with(".yaml")) continue;
    const std::string text = world->read(absolute(name)).value();
    const auto expected = world->read(absolute(name.substr(0, name.size() - 4) + "txt"));
    INFO(name);
    REQUIRE(expected);
    const Said said = say(text, name, *catalogue.value);
    CHECK(render(said.messages, [&](const std::string&, int n) { return line_of(text, n); }) ==
          *expected);
    const bool only_warnings =
        std::none_of(said.messages.begin(), said.messages.end(),
                     [](const Diagnostic& d) { return d.severity == Severity::error; });
    CHECK(said.passed == only_warnings);
    ++cases;
    if (!all_editable(said.messages)) continue;
    const Said again = say(mended(text, said.messages), name, *catalogue.value);
    CHECK(again.passed);
    CHECK(again.messages.empty());
    ++mendable;
  }
  CHECK(cases >= 50);
  CHECK(mendable >= 15);
}
