// bulk_named: a material of the layers by its id.
#pragma once
#include <string>

#include "check/layers.h"

namespace loamsheet {

// Null for a material that lies in no layer.
const Bulk* bulk_named(const Layers&, const std::string& material);

}  // namespace loamsheet
