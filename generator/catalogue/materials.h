// materials: materials and mixes out of their nodes.
#pragma once
#include <map>
#include <string>

#include "base/diagnostic.h"
#include "catalogue/catalogue.h"
#include "read/node.h"

namespace loamsheet {

Material material_of(const std::string& id, const Node&, const std::map<std::string, Source>&,
                     Sink&);

// `catalogue` holds the sources and the materials that a part may name.
Mix mix_of(const std::string& id, const Node&, const Catalogue& catalogue, Sink&);

}  // namespace loamsheet
