// conform: the tree of words of a document laid over a table of keys.
#pragma once
#include <span>
#include <string>
#include <vector>

#include "read/complaints.h"
#include "read/node.h"
#include "read/raw.h"

namespace loamsheet {

enum class Document { spec, profile, plain };  // plain: read with a table of its own

struct Against {
  std::span<const Key> table;
  Document document = Document::plain;
};

// Every key is looked up, every value read; what is missing is not looked at.
Node conform(const SourceText&, const Raw&, const Against&, Complaints&);

// A key that the table does not have in this group: the problem, and the name that was meant.
struct Stray {
  Diagnostic problem;
  std::string meant;  // empty when no name is near
};
struct StrayKey {
  std::string_view group;  // path of the group's row
  const RawEntry& entry;
  const Raw& among;  // the map it stands in
};
Stray stray_key(std::span<const Key> table, const StrayKey&);

// What is missing or does not belong together in the whole tree: required keys, keys that only go
// with another value of a neighbour, names used twice in a list.
void complete(const Node& root, std::span<const Key> table, Complaints&);

// Whether a row's `when` holds in a group: yes, no, or not to be told.
enum class Holds { yes, no, unsure };
Holds when_holds(const Key&, const Node& group, std::span<const Key> table);

}  // namespace loamsheet
