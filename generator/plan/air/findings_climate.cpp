// The findings of the air and of what heats it, animal by animal.
#include "plan/air/findings_air.h"

namespace loamsheet {

Found climate_findings(const Build& build, const Climate& plan) {
  Found all;
  for (const KeptAnimal& animal : build.kept) {
    if (plan.air) append(all, air_findings(build, *plan.air, animal));
  }
  if (plan.air) append(all, planted_air_findings(build, *plan.air));
  if (plan.air && plan.heat) append(all, heat_findings(build, *plan.heat, *plan.air));
  return all;
}

}  // namespace loamsheet
