// materials: materials and mixes out of their nodes.
#pragma once
#include <string>

#include "base/diagnostic.h"
#include "catalogue/catalogue.h"
#include "read/node.h"

namespace loamsheet {

// `catalogue` holds the sources and materials that a part may name.
Mix mix_of(const std::string& id, const Node&, const Catalogue& catalogue, Sink&);

}  // namespace loamsheet
