// soft_weights: how much each soft rule of placement counts, as data (templates/placement.yaml).
#pragma once
#include "base/diagnostic.h"
#include "base/world.h"

namespace loamsheet {

// They sum to 1. Where nobody weighed them, all count alike.
struct SoftWeights {
  double light = 0.25, humidity = 0.25, habit = 0.25, headroom = 0.25;
  bool operator==(const SoftWeights&) const = default;
};

// Reads templates/placement.yaml. Weights that do not sum to 1 are an error.
Outcome<SoftWeights> read_soft_weights(World&);

}  // namespace loamsheet
