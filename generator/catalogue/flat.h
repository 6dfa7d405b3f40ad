// flat: files of one `name: value` a line, the part of YAML that the templates need. Read here and
// not through read, because the templates are many, are read for every sheet, and hold no more
// than this. A value is plain (up to a blank and #) or in double quotes with \" and \\ inside.
#pragma once
#include <string>
#include <vector>

#include "base/diagnostic.h"
#include "base/span.h"
#include "base/world.h"

namespace loamsheet {

struct FlatLine {
  std::string name, value;
  Span where;  // the name
};

// The lines of a data file, in order. Reports lines of another form and names that come twice.
std::vector<FlatLine> read_flat(World&, const std::string& name, Sink&);

}  // namespace loamsheet
