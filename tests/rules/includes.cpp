// Dependencies point one way: the includes of generator/ against the table in DEVELOPERS.md.
#include <catch2/catch.hpp>
#include <map>
#include <set>

#include "tree.h"

namespace {

// The rows "| `plan` | base check | - |" of the table: folder, folders it may include, libraries.
struct Row {
  std::set<std::string> folders, headers;
};

std::set<std::string> words(const std::string& cell) {
  std::set<std::string> found;
  std::istringstream in(cell);
  for (std::string word; in >> word;) {
    if (word != "-" && word != "–") found.insert(word);
  }
  return found;
}

std::map<std::string, Row> table() {
  std::map<std::string, Row> rows;
  for (const auto& line : tree::lines_of(tree::root / "DEVELOPERS.md")) {
    if (!line.starts_with("| `")) continue;
    std::vector<std::string> cells;
    std::istringstream in(line.substr(1));
    for (std::string cell; std::getline(in, cell, '|');) cells.push_back(cell);
    if (cells.size() != 4) continue;
    const auto from = cells[0].find('`') + 1;
    rows[cells[0].substr(from, cells[0].rfind('`') - from)] = {words(cells[1]), words(cells[2])};
  }
  return rows;
}

struct Include {
  std::string name;
  bool angled;
};

std::vector<Include> includes(const tree::fs::path& file) {
  std::vector<Include> found;
  for (const auto& line : tree::lines_of(file)) {
    if (!line.starts_with("#include ")) continue;
    const bool angled = line[9] == '<';
    if (!angled && line[9] != '"') continue;  // a macro of FreeType's
    const auto end = line.find(angled ? '>' : '"', 10);
    found.push_back({line.substr(10, end - 10), angled});
  }
  return found;
}

// Headers of the third parties, by how their includes begin.
bool third_party(const std::string& name) {
  static const std::vector<std::string> starts{"yaml-cpp/", "cairo",    "ft2build", "hb",
                                               "hpdf",      "qpdf/",    "CLI/",     "fmt/",
                                               "nlohmann/", "libical/", "freetype"};
  return std::any_of(starts.begin(), starts.end(),
                     [&](const std::string& start) { return name.starts_with(start); });
}

std::string folder_of(const std::string& include) {
  return tree::fs::path(include).parent_path().generic_string();
}

std::string folder_of(const tree::fs::path& file) {
  return folder_of(tree::fs::relative(file, tree::root / "generator").generic_string());
}

bool starts_with_one_of(const std::string& name, const std::set<std::string>& starts) {
  return std::any_of(starts.begin(), starts.end(),
                     [&](const std::string& start) { return name.starts_with(start); });
}

std::vector<tree::fs::path> sources() {
  auto all = tree::files("generator", {".h", ".cpp"});
  std::erase_if(all, [](const auto& file) { return file.parent_path().filename() == "generator"; });
  return all;
}

// Headers that other folders include: their public faces.
std::set<std::string> public_headers() {
  std::set<std::string> found;
  for (const auto& file : sources()) {
    for (const auto& include : includes(file)) {
      if (!include.angled && folder_of(include.name) != folder_of(file)) found.insert(include.name);
    }
  }
  return found;
}

// "loamsheet_stage(plan USES base check LIBRARIES x)" as its name and the folders it uses.
std::map<std::string, std::set<std::string>> linked() {
  const std::string text = tree::text_of(tree::root / "generator/CMakeLists.txt");
  const std::string call = "\nloamsheet_stage(";
  std::map<std::string, std::set<std::string>> found;
  for (size_t at = text.find(call); at != std::string::npos; at = text.find(call, at + 1)) {
    const size_t from = at + call.size();
    std::istringstream in(text.substr(from, text.find(')', from) - from));
    std::string name, word;
    in >> name;
    auto& uses = found[name];
    while (in >> word && word != "LIBRARIES") {
      if (word != "USES") uses.insert(word);
    }
  }
  return found;
}

}  // namespace

TEST_CASE("every folder includes only the folders and libraries that the table allows") {
  const auto rows = table();
  REQUIRE(rows.size() >= 17);
  for (const auto& file : sources()) {
    INFO(file);
    REQUIRE(rows.count(folder_of(file)) == 1);
    const Row& row = rows.at(folder_of(file));
    for (const auto& include : includes(file)) {
      INFO(include.name);
      const std::string other = folder_of(include.name);
      const bool allowed =
          include.angled
              ? !third_party(include.name) || starts_with_one_of(include.name, row.headers)
              : other == folder_of(file) || row.folders.count(other) == 1;
      CHECK(allowed);
    }
  }
}

TEST_CASE("no library shows in a header that another folder includes") {
  for (const auto& header : public_headers()) {
    INFO(header);
    for (const auto& include : includes(tree::root / "generator" / header)) {
      CHECK_FALSE((include.angled && third_party(include.name)));
    }
  }
}

TEST_CASE("the build links just what the table says") {
  const auto built = linked();
  const auto rows = table();
  CHECK(built.size() == rows.size());
  for (const auto& [name, uses] : built) {
    INFO(name);
    REQUIRE(rows.count(name) == 1);
    CHECK(uses == rows.at(name).folders);
  }
}
