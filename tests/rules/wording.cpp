// Every sentence that the program names is in the templates, with all its slots filled.
#include <catch2/catch.hpp>
#include <regex>
#include <set>

#include "catalogue/wording.h"
#include "cli/cli.h"
#include "tree.h"
#include "world/world.h"

namespace {

using namespace loamsheet;

Wording english() {
  auto world = real_world();
  auto wording = read_wording(*world, "en", UnitSystem::metric);
  REQUIRE(wording);
  return *wording.value;
}

// Names of sentences as they stand between quotes in the code: say("layers.heading").
std::set<std::string> named_in_code() {
  static const std::regex call(R"re((?:say|knows)\(\s*"([a-z0-9.-]+)")re");
  std::set<std::string> names;
  for (const auto& file : tree::files("generator", {".cpp"})) {
    const std::string text = tree::text_of(file);
    for (std::sregex_iterator m(text.begin(), text.end(), call), end; m != end; ++m) {
      names.insert((*m)[1]);
    }
  }
  return names;
}

// True when the code quotes the name, a beginning of it that a suffix completes, its middle (rules
// and topics), or its middle in two pieces.
bool named_somewhere(const std::string& code, const std::string& name) {
  const auto dot = name.find('.'), last = name.rfind('.');
  const std::string middle = name.substr(dot + 1, last == dot ? std::string::npos : last - dot - 1);
  const auto quotes = [&](const std::string& text) {
    return code.find('"' + text + '"') != std::string::npos;
  };
  if (quotes(middle)) return true;
  for (size_t dash = middle.find('-'); dash != std::string::npos;
       dash = middle.find('-', dash + 1)) {
    if (quotes(middle.substr(0, dash)) && quotes(middle.substr(dash))) return true;
    if (quotes(middle.substr(0, dash + 1))) return true;
  }
  for (size_t end = name.size(); end > dot + 1; --end) {
    if (quotes(name.substr(0, end))) return true;
  }
  return false;
}

std::string run_for(const std::vector<std::string>& arguments) {
  std::string out;
  const Terminal terminal{[&](std::string_view text) { out += text; }, [](std::string_view) {}};
  auto world = real_world();
  CHECK(run(arguments, *world, terminal) <= 1);
  return out;
}

}  // namespace

TEST_CASE("every sentence that the code names is in the templates") {
  const Wording wording = english();
  const auto names = named_in_code();
  REQUIRE(names.size() > 60);
  for (const auto& name : names) {
    INFO(name);
    CHECK((name.ends_with('.') || name.ends_with('-') || wording.knows(name)));
  }
}

TEST_CASE("every finding has its words, its remedy and its source") {
  const Wording wording = english();
  std::set<std::string> rules;
  for (const auto& [name, sentence] : wording.sentences()) {
    if (name.starts_with("findings.")) rules.insert(name.substr(0, name.rfind('.')));
  }
  REQUIRE(rules.size() > 10);
  for (const auto& rule : rules) {
    INFO(rule);
    CHECK(wording.knows(rule + ".text"));
    CHECK(wording.knows(rule + ".remedy"));
    CHECK(wording.knows(rule + ".source"));
  }
}

TEST_CASE("no sheet asks for an unknown sentence or leaves a slot unfilled") {
  for (const auto& spec : tree::files("specs", {".yaml"})) {
    if (spec.parent_path() != tree::root / "specs") continue;
    INFO(spec);
    const std::string sheet = run_for({"check", spec.string(), "--emit", "sheet"});
    CHECK(sheet.size() > 1000);
    CHECK(run_for({"check", spec.string()}).size() > 10);
  }
}

TEST_CASE("templates hold no sentence that nothing names") {
  std::string code;
  for (const auto& file : tree::files("generator", {".cpp", ".h"})) code += tree::text_of(file);
  // Tasks and hazards are named by the rules, which are data: "  leak-test: {...}".
  for (const char* rules : {"templates/tasks.yaml", "templates/hazards.yaml"}) {
    for (const auto& line : tree::lines_of(tree::root / rules)) {
      if (line.starts_with("  - ")) code += '"' + line.substr(4) + '"';
      if (line.starts_with("  ")) code += '"' + line.substr(2, line.find(':') - 2) + '"';
    }
  }
  const Wording wording = english();
  for (const auto& [name, sentence] : wording.sentences()) {
    const std::string stem = name.substr(0, name.find('.'));
    // Units are looked up by kind, materials by the ids of the catalogue.
    if (stem == "units" || stem == "material") continue;
    INFO(name);
    CHECK(named_somewhere(code, name));
  }
}
