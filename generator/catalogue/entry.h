// entry: one entry of a shelf, read.
#pragma once
#include <optional>
#include <span>
#include <string>

#include "base/diagnostic.h"
#include "catalogue/shelf.h"
#include "read/key.h"
#include "read/node.h"

namespace loamsheet {

// The entry with this id as the table describes it; nothing, and why, when there is none or its
// lines cannot be read.
std::optional<Node> read_entry(const Shelf&, const std::string& id, std::span<const Key> table,
                               Sink&);

}  // namespace loamsheet
