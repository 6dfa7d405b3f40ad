#include "base/text.h"
#include "read/read.h"
#include "read/unit.h"

namespace loamsheet {
namespace {

struct Written {
  const Key* key;
  std::string operator()(std::monostate) const { return "-"; }
  std::string operator()(Unknown) const { return "?"; }
  std::string operator()(double v) const {
    return quantity_text(key ? key->kind : Kind::number, v);
  }
  std::string operator()(const Range<double>& r) const {
    return (*this)(r.low) + " – " + (*this)(r.high);
  }
  std::string operator()(bool yes) const { return yes ? "yes" : "no"; }
  std::string operator()(const std::string& text) const { return '"' + text + '"'; }
  std::string operator()(Date date) const { return iso(date); }
};

std::string place(const Node& node) {
  return std::to_string(node.where.line) + ':' + std::to_string(node.where.column);
}

void write(const Node& node, std::string& out) {
  if (node.form == Node::Form::leaf) {
    out += node.path + ' ' + std::visit(Written{node.key}, node.leaf) + " @" + place(node);
    if (!node.origin.empty()) out += " from " + node.origin;
    out += '\n';
    if (node.shadowed) {
      out += "  in place of ";
      write(*node.shadowed, out);
    }
  }
  for (const auto& [name, child] : node.entries) write(child, out);
  for (const auto& child : node.items) write(child, out);
}

}  // namespace

std::string dump(const Spec& spec) {
  std::string out = "spec v1\n";
  for (const auto& p : spec.profiles)
    out += "profile " + p.name + ", revision " + p.revision + '\n';
  write(spec.root, out);
  return out;
}

}  // namespace loamsheet
