// rule_keys: the table of templates/tasks.yaml.
#pragma once
#include <span>

#include "read/key.h"

namespace loamsheet {

std::span<const Key> rule_keys();

}  // namespace loamsheet
