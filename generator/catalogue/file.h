// file: the program's own data files.
#pragma once
#include <optional>
#include <span>
#include <string>

#include "base/diagnostic.h"
#include "base/world.h"
#include "read/read.h"

namespace loamsheet {

// A file as a whole, for problems that have no line.
Span whole_file(const std::string& path);

// The bytes of "fonts/sRGB.icc"; an error of the file kind when it cannot be read.
std::optional<std::string> data_bytes(World&, const std::string& name, Sink&);

// "specs/catalogue/mixes.yaml" as YAML; null, with the same error, when it cannot be read.
YamlFilePtr data_file(World&, const std::string& name, Sink&);

// The same, read by a table.
std::optional<Node> data_tree(World&, const std::string& name, std::span<const Key> table, Sink&);

}  // namespace loamsheet
