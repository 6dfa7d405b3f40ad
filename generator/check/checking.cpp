#include "check/checking.h"

#include "read/unit.h"

namespace loamsheet {

std::string length_text(Millimetres mm) {
  return mm.v == 0 ? "0 cm" : quantity_text(Kind::length, mm.v);
}

void Checking::error(const Span& where, std::string message, std::string expected,
                     std::string hint) {
  sink.add({.where = where,
            .message = std::move(message),
            .expected = std::move(expected),
            .hint = std::move(hint)});
}

Span place_of(const Node& node, std::string_view path) {
  if (const Node* found = node.find(path)) return found->where;
  const size_t dot = path.rfind('.');
  if (dot != std::string_view::npos) return place_of(node, path.substr(0, dot));
  return node.where;
}

}  // namespace loamsheet
