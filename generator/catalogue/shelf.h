// shelf: a section of the catalogue whose entries are known by their ids and read one by one. A
// build wants few of the many materials and living things, and reading them all would cost more
// than the rest of the plan.
#pragma once
#include <map>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "base/diagnostic.h"
#include "base/world.h"
#include "read/yaml_file.h"

namespace loamsheet {

struct Entry {
  YamlFilePtr file;  // the catalogue's or a shop's own
  PackedEntry at;    // its place there
  std::string common_name;
  std::vector<std::string> synonyms;  // former ids

  std::string_view text() const;  // as it stands in the file
};

struct Shelf {
  std::string file, section;             // "…/plants.yaml", "plants"
  std::map<std::string, Entry> entries;  // by id

  bool has(const std::string& id) const { return entries.contains(id); }
  const Entry& at(const std::string& id) const { return entries.at(id); }  // one that it has
  std::vector<std::string> ids() const;

  // The id that a former name stands for now.
  std::optional<std::string> renamed(const std::string& former) const;

  // Puts the entries of the file's section on the shelf; one of an id that is there takes its
  // place.
  void add(const YamlFilePtr&);
};

// The file specs/catalogue/SECTION.yaml, which holds that section alone.
Outcome<Shelf> read_shelf(World&, const std::string& section);

}  // namespace loamsheet
