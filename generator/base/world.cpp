#include "base/world.h"

namespace loamsheet {

std::optional<std::string> MemoryWorld::read(const std::string& path) {
  const auto found = files.find(path);
  return found == files.end() ? std::nullopt : std::optional(found->second);
}

bool MemoryWorld::write(const std::string& path, std::string_view bytes) {
  files[path] = std::string(bytes);
  return true;
}

std::vector<std::string> MemoryWorld::list(const std::string& folder) {
  std::vector<std::string> names;
  const std::string prefix = folder + '/';
  for (const auto& [path, bytes] : files) {
    if (path.starts_with(prefix) && path.find('/', prefix.size()) == std::string::npos) {
      names.push_back(path.substr(prefix.size()));
    }
  }
  return names;
}

}  // namespace loamsheet
