// stock: the stock list beside a spec.
#pragma once
#include <optional>
#include <string>

#include "base/diagnostic.h"
#include "base/world.h"
#include "catalogue/stock.h"
#include "read/read.h"

namespace loamsheet {

// The path of a file that the spec names, which stands beside it.
std::string path_beside(const Spec&, const std::string& name);

// The list that the spec names; nothing inside when it names none.
Outcome<std::optional<Stock>> named_stock(World&, const Spec&);

}  // namespace loamsheet
