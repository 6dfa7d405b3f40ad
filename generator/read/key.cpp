#include "read/key.h"

namespace loamsheet {

bool has_unit(Kind kind) {
  return kind >= Kind::length && kind <= Kind::hourly;
}

const Key* find_key(std::span<const Key> table, std::string_view path) {
  for (const Key& key : table) {
    if (key.path == path) return &key;
  }
  return nullptr;
}

std::vector<const Key*> keys_under(std::span<const Key> table, std::string_view path) {
  std::vector<const Key*> out;
  for (const Key& key : table) {
    std::string_view rest = key.path;
    if (!path.empty()) {
      if (!rest.starts_with(path) || rest.size() <= path.size() || rest[path.size()] != '.')
        continue;
      rest.remove_prefix(path.size() + 1);
    }
    if (rest.find_first_of(".[") == std::string_view::npos) out.push_back(&key);
  }
  return out;
}

}  // namespace loamsheet
