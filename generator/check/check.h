// check: Spec x Catalogue -> Build. Names are resolved, ranges held, defaults filled; every
// mistake of the spec is reported, none stops the others from being found. Never: a plan.
#pragma once
#include <string>

#include "base/diagnostic.h"
#include "catalogue/catalogue.h"
#include "check/build.h"
#include "read/read.h"

namespace loamsheet {

Outcome<Build> check(const Spec&, const Catalogue&);

// The build as stable text.
std::string dump(const Build&);

}  // namespace loamsheet
