#include "check/material_list.h"

#include <set>

namespace loamsheet {

bool MaterialList::has(const std::string& id) const {
  return read_.contains(id) || catalogue_.materials.has(id);
}

std::vector<std::string> MaterialList::ids() const {
  std::set<std::string> ids;
  for (const auto& [id, entry] : catalogue_.materials.entries) ids.insert(id);
  for (const auto& [id, material] : read_) ids.insert(id);
  return {ids.begin(), ids.end()};
}

std::vector<std::string> MaterialList::with_role(const std::string& role) {
  std::vector<std::string> found;
  for (const std::string& id : ids()) {
    const Material* material = find(id);
    if (material && material->role == role) found.push_back(id);
  }
  return found;
}

const Material* MaterialList::find(const std::string& id) {
  if (const auto known = read_.find(id); known != read_.end()) return &known->second;
  if (!catalogue_.materials.has(id)) return nullptr;
  auto material = taken(read_material(catalogue_, id), sink_);
  return material ? &(read_[id] = std::move(*material)) : nullptr;
}

Material& MaterialList::own(const std::string& id) {
  find(id);
  Material& material = read_[id];
  material.id = id;
  return material;
}

std::vector<Material> MaterialList::used() const {
  std::vector<Material> all;
  for (const auto& [id, material] : read_) all.push_back(material);
  return all;
}

}  // namespace loamsheet
