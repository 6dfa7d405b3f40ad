// fit_weight: how heavily a rule weighs, and what it rests on.
#pragma once
#include <optional>
#include <string>
#include <vector>

#include "base/finding.h"
#include "check/build.h"

namespace loamsheet {

using Origins = std::vector<Origin>;

// Nothing that is only from memory stops a build.
Weight held(Weight, const Origins&);

// Nothing where the hazard does not weigh.
std::optional<Weight> weight_of(Gravity, const Origins&);

// The titles of the sources, each once; the words "common practice" and "from memory" stand for
// themselves.
std::string sources_of(const Build&, const Origins&);

// Whether a fact is known and true.
bool holds(const Known<bool>&);

}  // namespace loamsheet
