// node: a document as it was typed, every value with its place and the row of its key.
#pragma once
#include <memory>
#include <optional>
#include <string>
#include <string_view>
#include <utility>
#include <variant>
#include <vector>

#include "base/date.h"
#include "base/span.h"
#include "base/units.h"
#include "read/key.h"

namespace loamsheet {

struct Unknown {  // "?" was typed
  bool operator==(const Unknown&) const = default;
};

// A leaf's value, in the unit its Kind keeps. Plain amounts, counts and numbers are doubles.
using Leaf = std::variant<std::monostate, Unknown, double, Range<double>, bool, std::string, Date>;

struct Node {
  enum class Form { leaf, map, list };

  // Out of line, for a map holds pairs of a type that is not complete here.
  Node();
  Node(const Node&);
  Node(Node&&) noexcept;
  Node& operator=(const Node&);
  Node& operator=(Node&&) noexcept;
  ~Node();

  Form form = Form::leaf;
  const Key* key = nullptr;  // its row; null only in documents read without a table
  std::string path;          // with list positions: "lamps[1].at[2]"
  Span where;                // the value
  Span name;                 // the key before it; line 0 for list items
  std::string typed;         // a leaf's text as it stands in the file
  Leaf leaf;
  std::string origin;                    // empty: the spec; otherwise "humid-sloped, revision 2"
  std::shared_ptr<const Node> shadowed;  // under a "?": what a profile states for the same key
  std::vector<std::pair<std::string, Node>> entries;  // of a map, in file order
  std::vector<Node> items;                            // of a list

  // The entry under a path relative to this node ("mesh.open", "at[1]"), or null.
  const Node* find(std::string_view path) const;
  bool has(std::string_view path) const { return find(path) != nullptr; }

  std::optional<double> number(std::string_view path) const;        // a double leaf
  std::optional<Range<double>> range(std::string_view path) const;  // a range or a single double
  std::optional<std::string> text(std::string_view path) const;
  std::optional<bool> yes(std::string_view path) const;
  std::optional<Date> date(std::string_view path) const;
  bool unknown(std::string_view path) const;
};

}  // namespace loamsheet
