// examples: the example specs, each planned, drafted and made into its files once for all tests;
// and texts held against files of expected/.
#pragma once
#include <filesystem>
#include <string>
#include <vector>

#include "job/job.h"

namespace loamsheet::tests {

// What one spec gives on its way.
struct Example {
  std::string name;  // "fern-ravine"
  std::string stem;  // "TT-0142-A"
  Planned planned;
  Drafted drafted;
  std::vector<OutputFile> files;

  // Of the file with this ending: ".json".
  const std::string& bytes(const std::string& ending) const;
};
const std::vector<Example>& examples();
const Example& example(const std::string& name);

std::string slurp(const std::filesystem::path&);
std::filesystem::path scratch(const std::string& name);  // in the system's folder for such files

// LOAMSHEET_REWRITE=1 was set: goldens are written anew. Where CI is set that fails.
bool rewriting();

// A file below expected/ says this; or is written anew.
void hold(const std::string& now, const std::string& golden);

}  // namespace loamsheet::tests
