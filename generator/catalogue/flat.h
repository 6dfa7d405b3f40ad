// flat: data files of one `name: value` a line, as the templates are.
#pragma once
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "base/diagnostic.h"
#include "base/span.h"
#include "base/world.h"
#include "read/yaml_file.h"

namespace loamsheet {

// Shows what lives as long as its file.
struct FlatLine {
  std::string_view name, value;
  const std::string* file;
  int line, column, length;  // of the name

  Span where() const { return {*file, line, column, length}; }
};

struct FlatFile {
  YamlFilePtr file;
  std::vector<FlatLine> lines;  // in the order of the file

  const FlatLine* find(std::string_view name) const;
};

// The lines of a file that was read; what has another form is reported.
FlatFile flat_file(YamlFilePtr, Sink&);

// The same of one of the program's own.
std::optional<FlatFile> read_flat(World&, const std::string& name, Sink&);

}  // namespace loamsheet
