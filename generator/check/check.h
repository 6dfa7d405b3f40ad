// check: Spec x Catalogue -> Build. Names are resolved, ranges held, defaults filled; every
// mistake of the spec is reported, none stops the others from being found. Never: a plan.
#pragma once
#include <optional>
#include <string>

#include "base/diagnostic.h"
#include "catalogue/catalogue.h"
#include "catalogue/stock.h"
#include "check/build.h"
#include "read/read.h"

namespace loamsheet {

// `stock` is the list that the spec names, if it names one.
Outcome<Build> check(const Spec&, const Catalogue&, const std::optional<Stock>& stock = {});

// How the sheet is to be printed, before the rest of a spec is checked.
Print print_of(const Node& root);

// The kind of build that the catalogue names: "semi-aquatic". Another word gives humid.
BuildKind kind_named(const std::string& name);

// The build as stable text.
std::string dump(const Build&);

}  // namespace loamsheet
