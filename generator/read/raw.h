// raw: a document as a tree of words with their places, before any key is known.
#pragma once
#include <string>
#include <vector>

#include "base/diagnostic.h"
#include "read/source.h"

namespace loamsheet {

struct RawEntry;

struct Raw {
  enum class Form { scalar, map, list, nothing, broken };
  Form form = Form::nothing;  // broken: a problem was already reported
  bool quoted = false;        // a scalar in quotes or a block scalar
  bool flow = false;          // a map or list in braces
  Span where;
  size_t begin = 0, end = 0;  // bytes of SourceText::text()
  std::string text;           // a scalar's value
  std::vector<RawEntry> entries;
  std::vector<Raw> items;
};

struct RawEntry {
  std::string key;
  Span name;
  size_t begin = 0, end = 0;  // bytes of the key
  Raw value;
};

struct RawDocument {
  Raw root;  // nothing when the text could not be read
  std::vector<Diagnostic> problems;
};

// Reads YAML text, one document. Aliases, anchors, tags, merge keys and doubled keys are problems.
RawDocument parse_yaml(const SourceText&);

}  // namespace loamsheet
