// compose: Plan x Figures x Wording -> Sheet, the document with its final words.
// Never: coordinates, a sentence written in C++.
#pragma once
#include <string>
#include <vector>

#include "base/diagnostic.h"
#include "catalogue/catalogue.h"
#include "catalogue/wording.h"
#include "check/build.h"
#include "compose/sheet.h"
#include "figure/figure.h"
#include "plan/plan.h"

namespace loamsheet {

struct ComposeInput {
  const Build& build;
  const Plan& plan;
  const Figures& figures;
  const Wording& wording;
  const Catalogue& catalogue;
  std::vector<std::string> parts;  // which parts, in order; empty: all
};

// The ids of all parts, in the order of the sheet.
const std::vector<std::string>& part_names();

Outcome<Sheet> compose(const ComposeInput&);

// The first page alone; the figures need have no more than their sizes and words.
Sheet compose_first_page(const ComposeInput&);

std::string dump(const Sheet&);

}  // namespace loamsheet
