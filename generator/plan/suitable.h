// suitable: whether a plant may go in with the animals and into this kind of build, wherever it
// stands there.
#pragma once
#include <optional>
#include <string>

#include "check/build.h"
#include "plan/finding.h"

namespace loamsheet {

struct Verdict {
  std::optional<Weight> worst;  // nothing: nothing is said against it
  std::string rule;             // that says it
};

Verdict verdict(const Build&, const PlantKind&);

}  // namespace loamsheet
