// tree_builder: the tree of a YAML file from what a parser meets in it, one call each. What is not
// read (aliases, anchors, tags, merge keys, keys given twice) is reported where it stands.
#pragma once
#include <map>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "read/complaints.h"
#include "read/raw.h"

namespace loamsheet {

// Thrown by the builder through a parser when nothing after this point can be read.
struct Stop {
  Diagnostic why;
};

class TreeBuilder {
 public:
  // `prepared` is the source with its unknowns marked; both live as long as the builder.
  TreeBuilder(const SourceText& source, std::string_view prepared)
      : source_(source), text_(prepared) {}

  // Places are bytes of the text.
  void document(size_t at);
  void null(size_t at) { add(nothing(at)); }
  void alias(size_t at);
  void scalar(size_t at, const std::string& value);
  void open(size_t at, Raw::Form, bool flow);
  void close();

  std::optional<size_t> open_brace() const;
  Raw take_root() { return std::move(root_); }
  Complaints& problems() { return problems_; }

 private:
  struct Frame {
    Raw node;
    std::optional<RawEntry> waiting;   // a key whose value comes next
    std::map<std::string, int> lines;  // of the keys so far
  };

  Span span(size_t begin, size_t length) const { return source_.span(begin, begin + length); }
  void report(size_t begin, size_t end, std::string message, std::string hint);
  size_t after_properties(size_t at);
  Raw nothing(size_t begin);
  void add(Raw);
  void add_key(Frame&, Raw);
  void add_entry(Frame&, Raw);

  const SourceText& source_;
  std::string_view text_;
  bool started_ = false;
  std::vector<Frame> frames_;
  Complaints problems_;
  Raw root_;
};

}  // namespace loamsheet
