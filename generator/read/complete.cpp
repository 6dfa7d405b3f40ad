#include <map>

#include "base/text.h"
#include "read/conform.h"
#include "read/scalar_end.h"

namespace loamsheet {
namespace {

std::string last_name(std::string_view path) {
  return std::string(path.substr(path.find_last_of('.') + 1));
}

// "shape=bow-front|corner" -> {shape, bow-front|corner}; "-choose" -> {choose, ""}.
struct When {
  std::string_view neighbour, values;
};

When taken_apart(std::string_view when) {
  if (when.starts_with('-')) return {when.substr(1), ""};
  const size_t equals = when.find('=');
  return {when.substr(0, equals), when.substr(equals + 1)};
}

std::string when_words(std::string_view when) {
  const When w = taken_apart(when);
  if (w.values.empty()) return "only where '" + std::string(w.neighbour) + "' is absent";
  return "only with " + std::string(w.neighbour) + ' ' + join(split(w.values, '|'), ", ");
}

class Completer {
 public:
  Completer(std::span<const Key> table, Complaints& out) : table_(table), out_(out) {}

  void visit(const Node& node) {
    if (node.form == Node::Form::map) group(node);
    if (node.form == Node::Form::list) names_once(node);
    for (const auto& [name, child] : node.entries) visit(child);
    for (const auto& child : node.items) visit(child);
  }

 private:
  void group(const Node&);
  void missing(const Node&, const Key&, std::string_view name);
  void misplaced(const Node&, const Node& group);
  void names_once(const Node& list);

  std::span<const Key> table_;
  Complaints& out_;
};

Span place_of_group(const Node& group) {
  if (group.path.empty()) return {group.where.file, 1, 1, 1};
  if (group.name.line > 0) return group.name;
  Span first = group.where;
  if (first.length > 1) first.length = 1;
  return first;
}

void Completer::missing(const Node& group, const Key& row, std::string_view name) {
  const std::string in = group.path.empty() ? "the file" : "'" + group.path + "'";
  out_.add(complaint(place_of_group(group), in + " has no '" + std::string(name) + "'",
                     expectation(row), std::string(row.help)));
}

void Completer::misplaced(const Node& node, const Node& group) {
  const When w = taken_apart(node.key->when);
  const Node* other = group.find(w.neighbour);
  const std::string typed = other ? other->typed : "";
  const std::string name = "'" + last_name(node.path) + "'";
  const std::string with = w.values.empty() || typed.empty()
                               ? "'" + std::string(w.neighbour) + "'"
                               : std::string(w.neighbour) + " '" + shortened(typed) + "'";
  out_.add(complaint(node.name.line > 0 ? node.name : node.where,
                     name + " does not go with " + with, name + ' ' + when_words(node.key->when),
                     "delete it, or change '" + std::string(w.neighbour) + "'"));
}

void Completer::group(const Node& node) {
  const std::string_view path = node.key ? node.key->path : "";
  for (const Key* row : keys_under(table_, path)) {
    const std::string_view name = row->path.substr(path.empty() ? 0 : path.size() + 1);
    const Node* child = node.find(name);
    if (!child && !row->has(flag::required)) continue;
    const Holds holds = when_holds(*row, node, table_);
    if (!child && holds == Holds::yes) missing(node, *row, name);
    if (child && holds == Holds::no) misplaced(*child, node);
  }
}

void Completer::names_once(const Node& list) {
  std::map<std::string, int> lines;
  for (const Node& item : list.items) {
    for (const auto& [key, value] : item.entries) {
      const auto* name = std::get_if<std::string>(&value.leaf);
      if (!value.key || !value.key->has(flag::name) || !name) continue;
      const auto [first, fresh] = lines.emplace(*name, value.where.line);
      if (fresh) continue;
      out_.add(complaint(
          value.where, "the name '" + *name + "' is used twice in '" + list.path + "'", "",
          "line " + std::to_string(first->second) + " has it, too; give this one another"));
    }
  }
}

}  // namespace

Holds when_holds(const Key& key, const Node& group, std::span<const Key> table) {
  if (key.when.empty()) return Holds::yes;
  const When w = taken_apart(key.when);
  if (w.values.empty()) return group.has(w.neighbour) ? Holds::no : Holds::yes;
  std::string value;
  if (const Node* other = group.find(w.neighbour)) {
    if (const auto* text = std::get_if<std::string>(&other->leaf)) value = *text;
  } else {
    const std::string path = std::string(group.key ? group.key->path : "") + '.';
    const Key* row = find_key(table, path + std::string(w.neighbour));
    if (row) value = row->fallback;
  }
  if (value.empty()) return Holds::unsure;
  for (const auto& known : split(w.values, '|')) {
    if (known == value) return Holds::yes;
  }
  return Holds::no;
}

void complete(const Node& root, std::span<const Key> table, Complaints& out) {
  Completer(table, out).visit(root);
}

}  // namespace loamsheet
