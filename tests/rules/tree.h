// tree: the project's own files, for rules that read them.
#pragma once
#include <algorithm>
#include <filesystem>
#include <fstream>
#include <sstream>
#include <string>
#include <vector>

namespace tree {

namespace fs = std::filesystem;

inline const fs::path root = LOAMSHEET_SOURCE;

inline std::string text_of(const fs::path& path) {
  std::ostringstream text;
  text << std::ifstream(path).rdbuf();
  return text.str();
}

inline std::vector<std::string> lines_of(const fs::path& path) {
  std::vector<std::string> lines;
  std::ifstream in(path);
  for (std::string line; std::getline(in, line);) lines.push_back(line);
  return lines;
}

// Files below a folder with one of the endings, sorted.
inline std::vector<fs::path> files(const fs::path& folder,
                                   const std::vector<std::string>& endings) {
  std::vector<fs::path> found;
  for (const auto& entry : fs::recursive_directory_iterator(root / folder)) {
    const std::string ending = entry.path().extension().string();
    for (const auto& wanted : endings) {
      if (entry.is_regular_file() && ending == wanted) found.push_back(entry.path());
    }
  }
  std::sort(found.begin(), found.end());
  return found;
}

}  // namespace tree
