// path: names of files.
#pragma once
#include <string>

namespace loamsheet {

// Without its folders.
inline std::string base_name(const std::string& path) {
  return path.substr(path.find_last_of('/') + 1);
}

}  // namespace loamsheet
