// settle: from a checked build to its plan, where the catalogue has a say: plants to pick, and
// plants that could stand in for those that fail.
#pragma once
#include "base/diagnostic.h"
#include "catalogue/catalogue.h"
#include "catalogue/wording.h"
#include "check/build.h"
#include "plan/plan.h"

namespace loamsheet {

struct Settled {
  Build build;  // with the plants that were picked and replaced
  Plan plan;
};

Outcome<Settled> settle(Build, const Catalogue&);

// Reports each caution that is to be taken on whose rule nobody knows.
void check_accepted_rules(const Build&, const Wording&, Sink&);

}  // namespace loamsheet
