// findings_uv: the UV that animals meet against their zone.
#pragma once
#include "plan/findings.h"

namespace loamsheet {

Found uv_findings(const Build&, const Plan&);

// In place of a change that mends a finding: that no single one does.
std::vector<std::pair<std::string, FindingArg>> no_mend(const std::string& why);

}  // namespace loamsheet
