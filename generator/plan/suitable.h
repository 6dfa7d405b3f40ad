// suitable: whether a plant may go in with the animals and into this kind of build.
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

// Asks the rules of plant_fit() about one plant after the other.
class Suitable {
 public:
  explicit Suitable(const Build& build) : build_(build) {}
  Verdict verdict(const PlantKind&);

 private:
  Build build_;
};

}  // namespace loamsheet
