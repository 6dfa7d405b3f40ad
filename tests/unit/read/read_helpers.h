// What the tests of the reader share: files of the source tree, a world with the profiles in it.
#pragma once
#include <string>
#include <vector>

#include "base/diagnostic.h"
#include "base/world.h"
#include "read/read.h"

// A path of the source tree.
std::string source_path(const std::string& name);
std::string file_text(const std::string& path);
void write_file(const std::string& path, const std::string& text);

// A world in memory that holds specs/profiles.
loamsheet::MemoryWorld world_with_profiles();

// The messages as the terminal shows them.
std::string rendered(loamsheet::World&, const std::vector<loamsheet::Diagnostic>&);

// The text with every proposed edit made.
std::string edited(const std::string& text, const std::vector<loamsheet::Diagnostic>&);

// A spec of two lines that reads without a problem, with more lines after it.
std::string small_spec(const std::string& more);

// Reads small_spec(more).
loamsheet::Outcome<loamsheet::Spec> read_small(const std::string& more);
