// own_catalogue: the catalogue with a shop's own files, which stand beside a spec.
#pragma once
#include <string>
#include <vector>

#include "base/diagnostic.h"
#include "base/world.h"
#include "catalogue/catalogue.h"
#include "read/read.h"

namespace loamsheet {

// The catalogue with the additions that the spec names, later ones over earlier.
Outcome<Catalogue> with_own_files(World&, const Spec&, Catalogue);

// The names of those files as the spec gives them.
std::vector<std::string> catalogue_files(const Spec&);

}  // namespace loamsheet
