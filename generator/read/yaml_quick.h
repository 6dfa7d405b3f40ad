// yaml_quick: a YAML file in which nothing is wrong, read by libyaml.
#pragma once
#include <optional>
#include <string>

#include "read/raw.h"

namespace loamsheet {

// The tree of a text whose unknowns are marked. Nothing when there is anything to complain of.
std::optional<Raw> read_quickly(const SourceText&, const std::string& prepared);

}  // namespace loamsheet
