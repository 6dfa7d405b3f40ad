// What README.md shows is run: its commands with the built program, its spec as a spec.
#include <catch2/catch.hpp>
#include <cstdlib>
#include <filesystem>
#include <fstream>
#include <sstream>
#include <string>
#include <vector>

#include <sys/wait.h>
#include <unistd.h>

namespace {

namespace fs = std::filesystem;

const fs::path source = LOAMSHEET_SOURCE;

std::string readme() {
  std::ostringstream text;
  text << std::ifstream(source / "README.md").rdbuf();
  return text.str();
}

// The fenced blocks of a language.
std::vector<std::string> blocks(const std::string& language) {
  const std::string text = readme(), open = "```" + language + '\n';
  std::vector<std::string> found;
  for (size_t at = text.find(open); at != std::string::npos; at = text.find(open, at + 1)) {
    const size_t from = at + open.size();
    found.push_back(text.substr(from, text.find("```", from) - from));
  }
  return found;
}

class Folder {
 public:
  Folder() {
    std::string name = (fs::temp_directory_path() / "loamsheet-docs-XXXXXX").string();
    path = ::mkdtemp(name.data());
  }
  ~Folder() { fs::remove_all(path); }
  fs::path path;
};

int exit_code(const fs::path& folder, const std::string& command) {
  const std::string line = "cd '" + folder.string() +
                           "' && PATH='" LOAMSHEET_BUILD ":'\"$PATH\" && { " + command +
                           "; } >/dev/null 2>&1";
  return WEXITSTATUS(std::system(line.c_str()));
}

std::string without_comment(const std::string& line) {
  return line.substr(0, line.find("  #"));
}

}  // namespace

TEST_CASE("the commands that the README shows do their work") {
  const Folder folder;
  fs::copy(source / "specs", folder.path / "specs", fs::copy_options::recursive);
  fs::create_directory(folder.path / "out");
  size_t run = 0;
  for (const auto& block : blocks("sh")) {
    std::istringstream lines(block);
    for (std::string line; std::getline(lines, line); ++run) {
      INFO(line);
      CHECK(exit_code(folder.path, without_comment(line)) == 0);
    }
  }
  CHECK(run >= 6);
}

TEST_CASE("the spec that the README shows is the one in specs") {
  const auto specs = blocks("yaml");
  REQUIRE(specs.size() == 1);
  std::ostringstream kept;
  kept << std::ifstream(source / "specs/short-order.yaml").rdbuf();
  const std::string text = kept.str();
  CHECK(text.substr(text.find('\n') + 1) == specs.front());
}

TEST_CASE("every file that the README and DEVELOPERS.md point at is there") {
  for (const std::string page : {"README.md", "DEVELOPERS.md"}) {
    std::ostringstream text;
    text << std::ifstream(source / page).rdbuf();
    const std::string words = text.str();
    for (size_t at = words.find("]("); at != std::string::npos; at = words.find("](", at + 1)) {
      const std::string target = words.substr(at + 2, words.find(')', at) - at - 2);
      INFO(page << ": " << target);
      CHECK(fs::exists(source / target));
    }
  }
}
