// suitable: whether a plant may go in with the animals and into this kind of build, wherever it
// stands there.
#pragma once
#include <optional>
#include <string>

#include "base/finding.h"
#include "check/build.h"

namespace loamsheet {

struct Verdict {
  std::optional<Weight> worst;  // nothing: nothing is said against it
  std::string rule;             // that says it
};

Verdict verdict(const Build&, const PlantKind&);

}  // namespace loamsheet
