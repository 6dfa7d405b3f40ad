// file: the program's own data files as trees.
#pragma once
#include <optional>
#include <span>
#include <string>

#include "base/diagnostic.h"
#include "base/world.h"
#include "read/read.h"

namespace loamsheet {

struct DataFile {
  std::string path, text;
};

// A file as a whole, for problems that have no line.
Span whole_file(const std::string& path);

// "specs/catalogue/mixes.yaml" with its bytes; an error of the file kind when it cannot be read.
std::optional<DataFile> data_file(World&, const std::string& name, Sink&);

// The same, read by a table.
std::optional<Node> data_tree(World&, const std::string& name, std::span<const Key> table, Sink&);

}  // namespace loamsheet
