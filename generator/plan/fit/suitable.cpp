#include "plan/fit/suitable.h"

#include "plan/fit/fit.h"

namespace loamsheet {

Verdict verdict(const Build& build, const PlantKind& kind) {
  const Suitability found = suitability(build, kind.facts, Span{});
  if (found.reasons.empty()) return {};
  return {found.reasons.front().weight, found.reasons.front().rule};
}

}  // namespace loamsheet
