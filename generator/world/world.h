// world: the real files, the staged fonts and SOURCE_DATE_EPOCH. Only this folder opens files.
#pragma once
#include <memory>

#include "base/world.h"

namespace loamsheet {

// The file of World::compiled(), which lies with the rest of the data once that is installed.
inline constexpr const char* compiled_name = "shipped.data";

// The program's data lie where it was built, or under LOAMSHEET_DATA when that is set.
std::unique_ptr<World> real_world();

}  // namespace loamsheet
