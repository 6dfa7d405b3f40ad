// light: the light and the UV of the lamps anywhere in the tank. Pure functions of a build.
#pragma once
#include <vector>

#include "base/finding.h"
#include "base/units.h"
#include "check/climate.h"
#include "plan/fill/fill.h"
#include "plan/light/light_field.h"

namespace loamsheet {

class FieldSink;

// The UV that an animal meets: at its back where it basks, and from the least to the most along the
// enclosure; against the means of its Ferguson zone, or of both where lists disagree, and the most
// that animals of the lower one were met in.
struct UvPlan {
  size_t animal = 0;  // of Build::kept
  Range<int> zone;
  Position back;
  double basking = 0, most = 0;
  Range<double> gradient, mean;
};
void fields(const UvPlan&, const Build&, FieldSink&);
std::vector<UvPlan> uv_plans(const Build&);  // of animals whose zone is known, under a UV lamp

// What is known once the lamps are looked at.
struct Lighting : Filling {
  std::vector<UvPlan> uv;
};

// Lamps of which too little is known, and the UV of the animals against their zones, with the
// change of a lamp that mends it.
Found lamp_findings(const Build&);
Found uv_findings(const Build&, const Lighting&);

}  // namespace loamsheet
