// language: which languages there are words of.
#pragma once
#include <string_view>

#include "base/world.h"
#include "read/complaints.h"
#include "read/node.h"

namespace loamsheet {

// The language that all others are compared with; it is always a choice.
inline constexpr std::string_view reference_language = "en";

// Reports a print.language that is no folder of templates/.
void check_language(World&, const Node& spec, Complaints&);

}  // namespace loamsheet
