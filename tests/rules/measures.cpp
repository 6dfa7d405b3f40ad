// The house measures: files, headers, lines and functions that fit a screen.
#include <catch2/catch.hpp>
#include <numeric>

#include "tree.h"

namespace {

constexpr size_t longest_file = 400, longest_header = 120, widest_line = 100, longest_function = 50;

size_t code_points(const std::string& line) {
  return static_cast<size_t>(std::count_if(line.begin(), line.end(), [](char c) {
    return (static_cast<unsigned char>(c) & 0xC0) != 0x80;
  }));
}

// A definition at the left margin: its first line has a bracket and it ends at a closing brace in
// column 1. Types, tables and namespaces are no functions.
bool opens_function(const std::string& line) {
  static const std::vector<std::string> others{"struct ",    "class ",  "enum ",
                                               "namespace ", "using ",  "constexpr ",
                                               "const ",     "static ", "inline constexpr "};
  if (line.empty() || line[0] == ' ' || line[0] == '#' || line[0] == '/' || line[0] == '}')
    return false;
  const bool other = std::any_of(others.begin(), others.end(), [&](const std::string& start) {
    return line.starts_with(start) && line.find('(') == std::string::npos;
  });
  return !other && line.find('(') != std::string::npos && line.find(';') == std::string::npos;
}

std::vector<size_t> function_lengths(const tree::fs::path& file) {
  std::vector<size_t> lengths;
  const auto lines = tree::lines_of(file);
  for (size_t i = 0; i < lines.size(); ++i) {
    if (!opens_function(lines[i])) continue;
    if (lines[i].ends_with('}')) {
      lengths.push_back(1);
      continue;
    }
    size_t end = i;
    while (end < lines.size() && !lines[end].starts_with("}")) ++end;
    INFO(file << ':' << i + 1);
    CHECK(end - i + 1 <= longest_function);
    lengths.push_back(end - i + 1);
    i = end;
  }
  return lengths;
}

}  // namespace

TEST_CASE("files, headers and lines keep to the house measures") {
  for (const auto& file : tree::files("generator", {".h", ".cpp"})) {
    const auto lines = tree::lines_of(file);
    INFO(file);
    CHECK(lines.size() <= (file.extension() == ".h" ? longest_header : longest_file));
    for (size_t i = 0; i < lines.size(); ++i) {
      INFO("line " << i + 1);
      if (code_points(lines[i]) > widest_line) CHECK(lines[i].find("\"") != std::string::npos);
    }
  }
}

TEST_CASE("functions are short: half within 8 lines, nine in ten under 30, none over 50") {
  std::vector<size_t> all;
  for (const auto& file : tree::files("generator", {".cpp"})) {
    const auto lengths = function_lengths(file);
    all.insert(all.end(), lengths.begin(), lengths.end());
  }
  REQUIRE(all.size() > 200);
  std::sort(all.begin(), all.end());
  CHECK(all[all.size() / 2] <= 8);
  CHECK(all[all.size() * 9 / 10] < 30);
}
