#include "compose/words.h"

#include <algorithm>

namespace loamsheet {

Words plain(std::string text) {
  return {{std::move(text), Face::regular}};
}

Words bold(std::string text) {
  return {{std::move(text), Face::bold}};
}

std::string material_name(const Wording& wording, const std::string& id) {
  const std::string name = "material." + id;
  if (wording.knows(name)) return wording.say(name);
  std::string spaced = id.starts_with("mix-") ? id.substr(4) : id;
  std::replace(spaced.begin(), spaced.end(), '-', ' ');
  return spaced;
}

Args with_materials_named(Args args, const Wording& wording) {
  for (auto& [slot, value] : args) {
    if (slot.ends_with("-material")) value = material_name(wording, std::get<std::string>(value));
  }
  return args;
}

std::string key_name(const Wording& wording, const std::string& key) {
  const std::string name = "unknown." + key;
  return wording.knows(name) ? wording.say(name) : key;
}

std::string listed(const Wording& wording, const std::vector<std::string>& items) {
  std::string out;
  for (size_t i = 0; i < items.size(); ++i) {
    if (i > 0) out += wording.say(i + 1 == items.size() ? "build.and" : "build.between");
    out += items[i];
  }
  return out;
}

}  // namespace loamsheet
