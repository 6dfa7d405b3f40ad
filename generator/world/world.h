// world: the real files, the staged fonts and SOURCE_DATE_EPOCH. Only this folder opens files.
#pragma once
#include <memory>

#include "base/world.h"

namespace loamsheet {

// The program's data lie where it was built, or under LOAMSHEET_DATA when that is set.
std::unique_ptr<World> real_world();

}  // namespace loamsheet
