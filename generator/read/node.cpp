#include "read/node.h"

#include <charconv>

namespace loamsheet {
namespace {

// The part of a path before the next '.' or '[', and what follows.
struct Step {
  std::string_view name, rest;
};

Step first_step(std::string_view path) {
  const size_t end = path.find_first_of(".[", path.starts_with('[') ? 1 : 0);
  if (end == std::string_view::npos) return {path, ""};
  return {path.substr(0, end), path.substr(path[end] == '.' ? end + 1 : end)};
}

const Node* item(const Node& list, std::string_view step) {
  size_t index = 0;
  const auto r = std::from_chars(step.data() + 1, step.data() + step.size(), index);
  const bool read = r.ec == std::errc() && *r.ptr == ']';
  return read && index < list.items.size() ? &list.items[index] : nullptr;
}

const Node* entry(const Node& map, std::string_view name) {
  for (const auto& [key, node] : map.entries) {
    if (key == name) return &node;
  }
  return nullptr;
}

template <class T>
std::optional<T> leaf_as(const Node* node) {
  const T* value = node ? std::get_if<T>(&node->leaf) : nullptr;
  return value ? std::optional(*value) : std::nullopt;
}

}  // namespace

Node::Node() = default;
Node::Node(const Node&) = default;
Node::Node(Node&&) noexcept = default;
Node& Node::operator=(const Node&) = default;
Node& Node::operator=(Node&&) noexcept = default;
Node::~Node() = default;

const Node* Node::find(std::string_view path) const {
  const Node* node = this;
  while (node && !path.empty()) {
    const Step step = first_step(path);
    node = step.name.starts_with('[') ? item(*node, step.name) : entry(*node, step.name);
    path = step.rest;
  }
  return node;
}

std::optional<double> Node::number(std::string_view path) const {
  return leaf_as<double>(find(path));
}

std::optional<Range<double>> Node::range(std::string_view path) const {
  const Node* node = find(path);
  if (const auto both = leaf_as<Range<double>>(node)) return both;
  const auto one = leaf_as<double>(node);
  return one ? std::optional(Range<double>{*one, *one}) : std::nullopt;
}

std::optional<std::string> Node::text(std::string_view path) const {
  return leaf_as<std::string>(find(path));
}

std::optional<bool> Node::yes(std::string_view path) const {
  return leaf_as<bool>(find(path));
}

std::optional<Date> Node::date(std::string_view path) const {
  return leaf_as<Date>(find(path));
}

bool Node::unknown(std::string_view path) const {
  const Node* node = find(path);
  return node && std::holds_alternative<Unknown>(node->leaf);
}

}  // namespace loamsheet
