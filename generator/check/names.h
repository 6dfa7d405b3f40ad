// names: ids of the spec looked up, with the nearest known one for a slip of the pen.
#pragma once
#include <string>
#include <string_view>
#include <vector>

#include "catalogue/shelf.h"
#include "check/checking.h"
#include "read/node.h"

namespace loamsheet {

// Reports that a word names nothing known: "unknown plant 'x'", with an edit when one is near.
struct Word {
  std::string typed;
  Span where;
};
void unknown_name(Checking&, const Word&, std::string_view what,
                  const std::vector<std::string>& known);

// The word that a leaf holds.
Word word_of(const Node& leaf);

// The id on the shelf that the leaf means; empty, and reported, when there is none. A former name
// is taken with a warning.
std::string resolve(Checking&, const Node& leaf, std::string_view what, const Shelf&);

template <class T>
std::vector<std::string> ids_of(const std::map<std::string, T>& map) {
  std::vector<std::string> ids;
  for (const auto& [id, value] : map) ids.push_back(id);
  return ids;
}

}  // namespace loamsheet
