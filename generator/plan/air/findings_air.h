// findings_air: the air of the enclosure against the bands of what lives in it, and its heat.
#pragma once
#include <optional>

#include "plan/air/air.h"
#include "plan/air/air_remedy.h"

namespace loamsheet {

// Temperature and humidity against one animal's bands, each with the least change that mends it.
Found air_findings(const Build&, const AirPlan&, const KeptAnimal&);

// The same against what plants and crew bear; one finding for a species and a miss.
Found planted_air_findings(const Build&, const AirPlan&);

// Heaters, and what the tank comes to with everything off and with everything on.
Found heat_findings(const Build&, const HeatPlan&, const AirPlan&);

// With the change that mends it under "mend" and its amount; where none is enough, `otherwise`
// names the sentence that says what is left to do. Sentences are those of templates/en/mend.yaml.
Finding with_mend(Finding, const std::optional<Mend>&, const char* otherwise);

// Nothing that is only assumed, or only known from memory, stops a build.
Weight weight_of_heat(const Build&, const Origin&);

}  // namespace loamsheet
