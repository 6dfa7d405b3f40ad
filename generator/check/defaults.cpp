#include "check/defaults.h"

#include <algorithm>

#include "base/text.h"
#include "read/quantity.h"

namespace loamsheet {
namespace {

Leaf leaf_of(const Key& key, std::string_view typed) {
  switch (key.kind) {
    case Kind::text:
    case Kind::id:
    case Kind::choice:
    case Kind::reference:
    case Kind::currency:
      return std::string(typed);
    case Kind::yes_no:
      return typed == "yes";
    default:
      return read_quantity(key, typed).value;
  }
}

// "kind=granules|raised-floor" and "-choose": whether the key belongs among these neighbours.
bool belongs(const Key& key, const Node& group) {
  if (key.when.empty()) return true;
  if (key.when[0] == '-') return !group.has(key.when.substr(1));
  const size_t equals = key.when.find('=');
  const auto value = group.text(key.when.substr(0, equals));
  const auto wanted = split(key.when.substr(equals + 1), '|');
  return value && std::find(wanted.begin(), wanted.end(), *value) != wanted.end();
}

std::string_view last_part(std::string_view path) {
  const size_t dot = path.rfind('.');
  return dot == std::string_view::npos ? path : path.substr(dot + 1);
}

// A group that may be absent, but whose keys all have defaults or may be absent, too.
bool defaults_alone(const Key& key) {
  if (key.kind != Kind::group || key.has(flag::required)) return false;
  const auto keys = keys_under(spec_keys(), key.path);
  return std::none_of(keys.begin(), keys.end(),
                      [](const Key* k) { return k->has(flag::required); }) &&
         std::any_of(keys.begin(), keys.end(), [](const Key* k) { return !k->fallback.empty(); });
}

void fill_group(Node& group, std::string_view row);

void add_default(Node& group, const Key& key) {
  const std::string name(last_part(key.path));
  Node node;
  node.key = &key;
  node.path = group.path.empty() ? name : group.path + '.' + name;
  node.where = node.name = group.where;
  node.origin = from_default;
  if (key.kind == Kind::group) {
    node.form = Node::Form::map;
    fill_group(node, key.path);
  } else {
    node.typed = std::string(key.fallback);
    node.leaf = leaf_of(key, key.fallback);
  }
  group.entries.emplace_back(name, std::move(node));
}

void fill_group(Node& group, std::string_view row) {
  for (const Key* key : keys_under(spec_keys(), row)) {
    if (group.has(last_part(key->path)) || !belongs(*key, group)) continue;
    if (!key->fallback.empty() || defaults_alone(*key)) add_default(group, *key);
  }
}

void fill_below(Node& node) {
  if (node.form == Node::Form::map && node.key) fill_group(node, node.key->path);
  for (auto& [name, child] : node.entries) fill_below(child);
  for (Node& child : node.items) fill_below(child);
}

// "[45 cm, 32 cm]": a list, or a leaf, as it may be typed.
std::string typed_of(const Node& node) {
  if (node.form != Node::Form::list) return node.typed;
  std::vector<std::string> parts;
  for (const Node& item : node.items) parts.push_back(typed_of(item));
  return '[' + join(parts, ", ") + ']';
}

bool plain_list(const Node& node) {
  if (node.form == Node::Form::map) return false;
  return std::all_of(node.items.begin(), node.items.end(), plain_list);
}

// The origin of a leaf or of all leaves of a list.
std::string origin_of(const Node& node) {
  return node.items.empty() ? node.origin : origin_of(node.items.front());
}

void list_assumed(const Node& node, const std::string& item, std::vector<Assumed>& out) {
  if (!plain_list(node)) {
    for (const auto& [name, child] : node.entries) list_assumed(child, item, out);
    for (const Node& child : node.items) list_assumed(child, called(child), out);
    return;
  }
  const std::string origin = origin_of(node);
  if (!origin.empty()) out.push_back({node.path, typed_of(node), origin, item});
}

void list_unknown(const Node& node, std::vector<UnknownInput>& out) {
  if (std::holds_alternative<Unknown>(node.leaf)) {
    // One choice of a profile is no range: what is not known may be any of them.
    const Node* stated = node.key->kind == Kind::choice ? nullptr : node.shadowed.get();
    out.push_back({node.path, node.where, stated ? stated->origin : "catalogue",
                   stated ? stated->typed : std::string(node.key->unknown)});
  }
  for (const auto& [name, child] : node.entries) list_unknown(child, out);
  for (const Node& child : node.items) list_unknown(child, out);
}

}  // namespace

void fill_defaults(Node& root) {
  fill_group(root, "");
  for (auto& [name, child] : root.entries) fill_below(child);
}

std::string called(const Node& item) {
  for (const char* key : {"name", "id", "species", "kind"}) {
    if (const auto text = item.text(key)) return *text;
  }
  return "";
}

std::vector<Assumed> assumed_values(const Node& root) {
  std::vector<Assumed> out;
  for (const auto& [name, child] : root.entries) list_assumed(child, "", out);
  return out;
}

std::vector<UnknownInput> unknown_inputs(const Node& root) {
  std::vector<UnknownInput> out;
  list_unknown(root, out);
  return out;
}

}  // namespace loamsheet
