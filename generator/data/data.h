// data: a plan as data for other programs - JSON, CSV and plain lines.
// In: Build, Plan, Wording (for the sentences of findings). Never: a figure that plan did not
// work out; a key whose part is not built is absent.
#pragma once
#include <string>
#include <vector>

#include "catalogue/wording.h"
#include "check/build.h"
#include "plan/plan.h"

namespace loamsheet {

struct PlannedBuild {
  const Build& build;
  const Plan& plan;
  const Wording& wording;
};

// One object, metric, units in the key names, six significant digits; a figure with spread is
// [low, high].
std::string numbers_json(const PlannedBuild&);

// The same figures, one a line: "layers.drainage.volume_l 20.25".
std::string numbers_text(const PlannedBuild&);

// The pull list after RFC 4180: item,need,unit and, with a stock list, for,packs,pack,pack_unit,
// price,shelf,missing,left_over, a line for each size of pack. Prices are those of one pack.
std::string pull_list_csv(const PlannedBuild&);

// Findings of several specs as one object: {"specs": [{file, status}], "findings": [...]}, where
// each finding has the place of its spec among them, from 0. A file is named without its folders.
std::string findings_json(const std::vector<PlannedBuild>&);

// Findings as lines for the terminal, each with its place, remedy and source; then the status.
std::string findings_text(const PlannedBuild&);

}  // namespace loamsheet
