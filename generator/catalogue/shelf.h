// shelf: a long file of the catalogue, cut into its entries but not read. A build wants few of the
// many materials and living things, and reading them all would cost more than the rest of the plan.
//
// The layout that this counts on: the section's name alone on a line, then entries whose ids stand
// two blanks in, each with nothing or its {...} behind it; `name:` and `synonyms: [...]` of an
// entry four blanks in, each on one line.
#pragma once
#include <map>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "base/diagnostic.h"
#include "base/world.h"

namespace loamsheet {

struct Entry {
  std::string file;  // "specs/catalogue/plants.yaml", or a shop's own
  std::string common_name;
  std::vector<std::string> synonyms;  // former ids
  std::string text;                   // its lines as they stand in the file
  int line = 0;                       // of its id
};

struct Shelf {
  std::string file, section;             // "…/plants.yaml", "plants"
  std::map<std::string, Entry> entries;  // by id

  bool has(const std::string& id) const { return entries.contains(id); }
  const Entry& at(const std::string& id) const { return entries.at(id); }  // one that it has
  std::vector<std::string> ids() const;

  // The id that a former name stands for now.
  std::optional<std::string> renamed(const std::string& former) const;
};

// The file specs/catalogue/SECTION.yaml. An error names a line that is not laid out as above.
Outcome<Shelf> read_shelf(World&, const std::string& section);

// Puts the entries of a file of several sections on the shelves of those sections; one of an id
// that is there takes its place. Lines of other sections are passed over.
void cut_into(const std::vector<Shelf*>&, const std::string& file, std::string_view text, Sink&);

}  // namespace loamsheet
