// language: the files of one language, read and found whole: with every file, sentence and slot of
// English, and English with those that the program was built with.
#pragma once
#include <string>
#include <vector>

#include "base/world.h"
#include "catalogue/flat.h"

namespace loamsheet {

// The files of templates/LANGUAGE/. What is missing or not known is reported, all of it.
std::vector<FlatFile> read_language(World&, const std::string& language, Sink&);

// The slots of a sentence as they are written, "volume:dry".
std::vector<std::string_view> slots_in(std::string_view sentence);

}  // namespace loamsheet
