#include "plan/suitable.h"

#include "plan/fit.h"

namespace loamsheet {

Verdict Suitable::verdict(const PlantKind& kind) {
  PlantUse use;
  use.facts = kind.facts, use.ppfd = kind.ppfd;
  build_.plants.assign(1, std::move(use));
  Verdict verdict;
  for (const Finding& finding : plant_fit(build_)) {
    if (verdict.worst && *verdict.worst <= finding.weight) continue;
    verdict = {finding.weight, finding.rule};
  }
  return verdict;
}

}  // namespace loamsheet
