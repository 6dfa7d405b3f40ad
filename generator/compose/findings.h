// findings: what a rule found, in words.
#pragma once
#include <optional>
#include <string>
#include <vector>

#include "catalogue/wording.h"
#include "check/build.h"
#include "plan/plan.h"

namespace loamsheet {

struct SpokenFinding {
  std::string severity;  // stop | caution | note
  std::string rule;
  Span where;  // the spec itself when the rule has no place of its own
  std::string text, remedy, source;
  std::optional<TakenOn> taken_on;  // as the spec says it
  std::vector<StandIn> stand_ins;   // named in the remedy, too
};

SpokenFinding speak(const Finding&, const Build&, const Wording&);
std::vector<SpokenFinding> speak(const std::vector<Finding>&, const Build&, const Wording&);

}  // namespace loamsheet
