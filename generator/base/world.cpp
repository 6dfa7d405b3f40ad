#include "base/world.h"

#include <set>

namespace loamsheet {

namespace {

std::optional<std::string> value_in(const std::map<std::string, std::string>& values,
                                    const std::string& name) {
  const auto found = values.find(name);
  return found == values.end() ? std::nullopt : std::optional(found->second);
}

}  // namespace

std::optional<std::string> MemoryWorld::read(const std::string& path) {
  return value_in(files, path);
}

std::optional<std::string> MemoryWorld::variable(const std::string& name) {
  return value_in(variables, name);
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

std::vector<std::string> MemoryWorld::folders(const std::string& folder) {
  std::set<std::string> names;
  const std::string prefix = folder + '/';
  for (const auto& [path, bytes] : files) {
    const size_t end = path.find('/', prefix.size());
    if (path.starts_with(prefix) && end != std::string::npos) {
      names.insert(path.substr(prefix.size(), end - prefix.size()));
    }
  }
  return {names.begin(), names.end()};
}

}  // namespace loamsheet
