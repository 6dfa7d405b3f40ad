// Runs the command line as a user does. Each file of cases/ holds comments (#), the lines of files
// to lay out ("= NAME" lines start one, "| " lines are its text), commands ($), what stdout (>)
// and stderr (!) must say, and the exit code (=). "..." stands for any run of lines; commands know
// the folders $source and $build.
#include <catch2/catch.hpp>
#include <cstdio>
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

struct Step {
  std::string command;
  std::vector<std::string> out, err;
  int code = 0;
};

struct Case {
  std::vector<std::pair<std::string, std::string>> files;
  std::vector<Step> steps;
};

std::string after_sign(const std::string& line) {
  return line.size() > 2 ? line.substr(2) : "";
}

Case read_case(const fs::path& path) {
  std::ifstream in(path);
  Case c;
  for (std::string line; std::getline(in, line);) {
    const char sign = line.empty() ? '#' : line[0];
    const std::string rest = after_sign(line);
    if (sign == '@') c.files.emplace_back(rest, "");
    if (sign == '|') c.files.back().second += rest + '\n';
    if (sign == '$') c.steps.push_back({rest, {}, {}, 0});
    if (sign == '>') c.steps.back().out.push_back(rest);
    if (sign == '!') c.steps.back().err.push_back(rest);
    if (sign == '=') c.steps.back().code = std::stoi(rest);
  }
  return c;
}

std::string slurp(const fs::path& path) {
  std::ostringstream text;
  text << std::ifstream(path).rdbuf();
  return text.str();
}

std::vector<std::string> lines_of(const std::string& text) {
  std::vector<std::string> lines;
  std::istringstream in(text);
  for (std::string line; std::getline(in, line);) {
    if (!line.empty() && line.back() == '\r') line.pop_back();
    lines.push_back(line);
  }
  return lines;
}

// True when `said` is what `wanted` says, "..." standing for any lines.
bool matches(const std::vector<std::string>& wanted, size_t w, const std::vector<std::string>& said,
             size_t s) {
  if (w == wanted.size()) return s == said.size();
  if (wanted[w] != "...") {
    return s < said.size() && said[s] == wanted[w] && matches(wanted, w + 1, said, s + 1);
  }
  for (size_t skip = s; skip <= said.size(); ++skip) {
    if (matches(wanted, w + 1, said, skip)) return true;
  }
  return false;
}

class Folder {
 public:
  Folder() {
    std::string name = (fs::temp_directory_path() / "loamsheet-cli-XXXXXX").string();
    path = ::mkdtemp(name.data());
  }
  ~Folder() { fs::remove_all(path); }
  fs::path path;
};

void run_step(const Step& step, const fs::path& folder) {
  const std::string line = "source='" LOAMSHEET_SOURCE "' build='" LOAMSHEET_BUILD "'; cd '" +
                           folder.string() + "' && PATH=\"$build:$PATH\" && { " + step.command +
                           "; } >.out 2>.err";
  const int status = std::system(line.c_str());
  const std::string out = slurp(folder / ".out"), err = slurp(folder / ".err");
  INFO("$ " << step.command << "\nstdout:\n" << out << "stderr:\n" << err);
  CHECK(matches(step.out, 0, lines_of(out), 0));
  CHECK(matches(step.err, 0, lines_of(err), 0));
  CHECK(WEXITSTATUS(status) == step.code);
}

}  // namespace

TEST_CASE("every case of the command line does as its file says") {
  size_t run = 0;
  for (const auto& entry : fs::directory_iterator(LOAMSHEET_SOURCE "/tests/cli/cases")) {
    DYNAMIC_SECTION(entry.path().filename().string()) {
      const Case c = read_case(entry.path());
      REQUIRE_FALSE(c.steps.empty());
      const Folder folder;
      for (const auto& [name, text] : c.files) std::ofstream(folder.path / name) << text;
      for (const auto& step : c.steps) run_step(step, folder.path);
    }
    ++run;
  }
  CHECK(run > 0);
}
