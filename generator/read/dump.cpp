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

// Line and column of a value: after another of its file the lines from that one, on its line the
// columns.
std::string place(const Span& at, const Span& before) {
  const auto more = [](int n) { return (n < 0 ? "" : "+") + std::to_string(n); };
  if (at.file != before.file) return std::to_string(at.line) + ':' + std::to_string(at.column);
  if (at.line == before.line) return more(at.column - before.column);
  return more(at.line - before.line) + ':' + std::to_string(at.column);
}

class Writer {
 public:
  void write(const Node& node, const std::string& name, const std::string& indent) {
    out += indent + name;
    if (node.form == Node::Form::leaf) write_leaf(node);
    out += '\n';
    if (node.shadowed) write(*node.shadowed, "in place of", indent + "  ");
    write_below(node, indent + "  ");
  }

  void write_below(const Node& node, const std::string& indent) {
    for (const auto& [name, child] : node.entries) write(child, name, indent);
    for (const auto& child : node.items) write(child, "-", indent);
  }

  std::string out;

 private:
  void write_leaf(const Node& node) {
    out += ' ' + std::visit(Written{node.key}, node.leaf) + " @" + place(node.where, before_);
    if (!node.origin.empty()) out += " from " + node.origin;
    before_ = node.where;
  }

  Span before_;
};

}  // namespace

std::string dump(const Spec& spec) {
  Writer writer;
  writer.out = "spec v2\n";
  for (const auto& p : spec.profiles) {
    writer.out += "profile " + p.name + ", revision " + p.revision + '\n';
  }
  writer.write_below(spec.root, "");
  return writer.out;
}

}  // namespace loamsheet
