// findings_uv: what is said where no change of a lamp mends a finding.
#pragma once
#include "plan/light/light.h"

namespace loamsheet {

// In place of a change that mends a finding: that no single one does.
Args no_mend(const std::string& why);

}  // namespace loamsheet
