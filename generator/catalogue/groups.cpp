#include "catalogue/groups.h"

#include <algorithm>

#include "catalogue/fact_line.h"
#include "catalogue/file.h"
#include "catalogue/keys.h"

namespace loamsheet {
namespace {

Body body_of(const Node& lines, const Shelf& sources, Sink& sink) {
  Body body;
  for (const Node& node : lines.items) {
    const FactLine line(node, sources, sink);
    line.take("skin_takes_up", body.skin_takes_up);
    line.take("moults_bare", body.moults_bare);
    line.take("thickness", body.thickness);
  }
  return body;
}

}  // namespace

std::map<std::string, Body> read_groups(World& world, const Shelf& sources, Sink& sink) {
  std::map<std::string, Body> groups;
  const auto root = data_tree(world, "specs/catalogue/groups.yaml", group_keys(), sink);
  const Node* section = root ? root->find("groups") : nullptr;
  if (!section) return groups;
  for (const auto& [id, lines] : section->entries) groups[id] = body_of(lines, sources, sink);
  return groups;
}

Body body_of(const std::map<std::string, Body>& groups, std::string group) {
  std::replace(group.begin(), group.end(), ' ', '-');
  const auto found = groups.find(group);
  return found == groups.end() ? Body{} : found->second;
}

}  // namespace loamsheet
