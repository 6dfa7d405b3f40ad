#include <algorithm>
#include <set>

#include "read/conform.h"
#include "read/profiles.h"

namespace loamsheet {
namespace {

// The keys of a group that decide which others belong in it.
std::set<std::string_view> selectors(std::string_view group) {
  std::set<std::string_view> out;
  for (const Key* key : keys_under(spec_keys(), group)) {
    if (!key->when.empty()) out.insert(key->when.substr(0, key->when.find('=')));
  }
  return out;
}

bool of_another_kind(const Node& base, const Node& over) {
  if (!over.key) return false;
  const auto names = selectors(over.key->path);
  return std::any_of(names.begin(), names.end(), [&](std::string_view name) {
    const auto before = base.text(name), after = over.text(name);
    return before && after && *before != *after;
  });
}

// The name of a list's item, when its row gives it one.
std::string name_of(const Node& item) {
  for (const auto& [key, value] : item.entries) {
    const auto* name = std::get_if<std::string>(&value.leaf);
    if (name && value.key && value.key->has(flag::name)) return *name;
  }
  return "";
}

bool items_have_names(const Node& list) {
  return std::all_of(list.items.begin(), list.items.end(),
                     [](const Node& item) { return !name_of(item).empty(); });
}

Node* entry(Node& map, std::string_view name) {
  for (auto& [key, node] : map.entries) {
    if (key == name) return &node;
  }
  return nullptr;
}

Node merged_map(Node base, Node over) {
  if (of_another_kind(base, over)) return over;
  for (auto& [name, below] : base.entries) {
    if (Node* above = entry(over, name)) {
      *above = merged(std::move(below), std::move(*above));
    } else {
      over.entries.emplace_back(name, std::move(below));
    }
  }
  return over;
}

// Positions in paths follow the merged list.
void move_path(Node& node, const std::string& from, const std::string& to) {
  node.path = to + node.path.substr(from.size());
  for (auto& [name, child] : node.entries) move_path(child, from, to);
  for (auto& child : node.items) move_path(child, from, to);
}

Node merged_list(Node base, Node over) {
  if (base.items.empty() || over.items.empty()) return over;
  if (!items_have_names(base) || !items_have_names(over)) return over;
  std::vector<Node> items = std::move(base.items);
  for (Node& above : over.items) {
    const std::string name = name_of(above);
    const auto below = std::find_if(items.begin(), items.end(),
                                    [&](const Node& item) { return name_of(item) == name; });
    if (below == items.end()) {
      items.push_back(std::move(above));
    } else {
      *below = merged(std::move(*below), std::move(above));
    }
  }
  for (size_t i = 0; i < items.size(); ++i) {
    const std::string from = items[i].path;
    move_path(items[i], from, over.path + '[' + std::to_string(i) + ']');
  }
  over.items = std::move(items);
  return over;
}

}  // namespace

Node merged(Node base, Node over) {
  if (base.form == Node::Form::map && over.form == Node::Form::map) {
    return merged_map(std::move(base), std::move(over));
  }
  if (base.form == Node::Form::list && over.form == Node::Form::list) {
    return merged_list(std::move(base), std::move(over));
  }
  if (!std::holds_alternative<Unknown>(over.leaf)) return over;
  const bool known = !std::holds_alternative<Unknown>(base.leaf);
  over.shadowed = known ? std::make_shared<const Node>(std::move(base)) : base.shadowed;
  return over;
}

}  // namespace loamsheet
