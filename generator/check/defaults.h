// defaults: what the spec leaves to the table of keys, and what it took from profiles.
#pragma once
#include <string>
#include <vector>

#include "check/build.h"
#include "read/node.h"

namespace loamsheet {

// The origin of a value that was filled in from its key's row.
inline constexpr const char* from_default = "default";

// Adds every absent key that has a default value and belongs where it is absent.
void fill_defaults(Node& root);

// What an item of a list goes by: its name, id, species or kind; empty when it has none.
std::string called(const Node& item);

// The values that the spec did not state itself: from profiles, and defaults.
std::vector<Assumed> assumed_values(const Node& root);

// Every "?" with the range that stands in for it.
std::vector<UnknownInput> unknown_inputs(const Node& root);

}  // namespace loamsheet
