// One name, one type: two types of the same name in two folders would be one to the linker.
#include <catch2/catch.hpp>
#include <map>
#include <regex>
#include <set>

#include "tree.h"

namespace {

// The text without what stands in unnamed namespaces, where names are a file's own.
std::string shared_part(const tree::fs::path& file) {
  static const std::string opens = "\nnamespace {\n", closes = "\n}  // namespace\n";
  std::string text = tree::text_of(file);
  for (size_t at = text.find(opens); at != std::string::npos; at = text.find(opens)) {
    text.erase(at, text.find(closes, at) + closes.size() - at - 1);
  }
  return text;
}

std::set<std::string> defined_in(const tree::fs::path& file) {
  static const std::regex definition(
      R"re(\n(?:struct|class|enum class) (\w+) (?:final )?(?::[^;{]*)?\{)re");
  const std::string text = shared_part(file);
  std::set<std::string> names;
  for (std::sregex_iterator m(text.begin(), text.end(), definition), end; m != end; ++m) {
    names.insert((*m)[1]);
  }
  return names;
}

}  // namespace

TEST_CASE("no two files define types of the same name") {
  std::map<std::string, std::string> home;
  for (const auto& file : tree::files("generator", {".h", ".cpp"})) {
    for (const auto& name : defined_in(file)) {
      const auto [first, fresh] = home.emplace(name, file.string());
      INFO(name << " in " << file << " and " << first->second);
      CHECK(fresh);
    }
  }
  CHECK(home.size() > 100);
}
