// compiled: the YAML files that ship with the program, read at build time and kept in one piece of
// data, so that a start costs little. A file is compared with the bytes it was compiled from, each
// time: one that was changed, added or put back is read afresh, whatever its date says.
#pragma once
#include <memory>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "base/world.h"
#include "read/yaml_file.h"

namespace loamsheet {

using CompiledData = std::shared_ptr<const std::string>;

// "templates/en/layers.yaml" and the like: what ships, below a folder.
std::vector<std::string> shipped_files(World&, const std::string& root);

// The data of files in which nothing is wrong.
std::string compile(const std::vector<YamlFilePtr>&);

// The file of a name as it was compiled; null when there is none of that name, or when the data
// are missing, torn or of another version of the program.
YamlFilePtr compiled_file(const CompiledData&, const std::string& name);

// The names of what was compiled.
std::vector<std::string> compiled_names(const CompiledData&);

// A file of the program's own: from the data when it was compiled from these very bytes.
YamlFilePtr shipped_file(const CompiledData&, const std::string& name, std::string text);

}  // namespace loamsheet
