// cli: the command line as a library object. Only this folder prints.
#pragma once
#include <functional>
#include <string>
#include <string_view>
#include <vector>

#include "base/world.h"

namespace loamsheet {

// Where data and words go.
struct Terminal {
  std::function<void(std::string_view)> out, err;
};

// Runs one command line (without the program's own name). Returns the exit code: 0 done, 1 a stop
// finding, 2 the spec or the command line is wrong, 3 a file could not be read or written,
// 4 an internal fault; the worst of several wins.
int run(const std::vector<std::string>& arguments, World&, const Terminal&);

}  // namespace loamsheet
