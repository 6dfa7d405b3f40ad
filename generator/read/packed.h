// packed: the tree of a YAML file in few bytes, any part of which can be opened by itself. The same
// bytes come from the parser as it reads and from the data that the build compiled.
#pragma once
#include <string>
#include <string_view>
#include <vector>

#include "read/raw.h"

namespace loamsheet {

// Words that stand in the text as they were read are kept as their places in it.
std::string pack(const Raw&, std::string_view text);

struct PackedEntry;

// A value of a packed tree. File, text and tree must outlive it and all that it shows.
class Packed {
 public:
  Packed() = default;
  Packed(const std::string& file, std::string_view text, std::string_view tree)
      : file_(&file), text_(text.data()), at_(tree.data()) {}

  Raw::Form form() const;
  Raw opened() const;                            // the value as a tree
  std::vector<PackedEntry> entries() const;      // of a map; none of anything else
  std::vector<Packed> items() const;             // of a list; none of anything else
  std::optional<std::string_view> text() const;  // of a scalar
  Span where() const;
  size_t end() const;  // its last byte in the text, and one

 private:
  friend class PackedReader;
  const std::string* file_ = nullptr;
  const char* text_ = nullptr;
  const char* at_ = nullptr;
};

struct PackedEntry {
  std::string_view key;
  const std::string* file;
  int line, column, length;  // of the key
  size_t begin, end;         // bytes of the key
  Packed value;

  Span name() const { return {*file, line, column, length}; }
};

}  // namespace loamsheet
