// plan: what follows from a checked build - volumes, masses, water, places, dates, findings.
// In: Build. Out: Plan, made of what the rooms fill, light, air, fit, place, choose, care and shop
// give. Pure: no files, no clock, no locale, no words, no positions on paper.
#pragma once
#include <string>
#include <vector>

#include "base/finding.h"
#include "plan/choose/choose.h"
#include "plan/shop/shop.h"

namespace loamsheet {

enum class Status { cleared, provisional, not_cleared };
std::string name_of(Status);

struct Plan : Shopped {
  Status status = Status::cleared;
  std::vector<Selection> selections;  // of the plants that the plan picked
  std::vector<Finding> findings;      // stops first, then cautions, then notes; in spec order
};

// `selections` say how the plants came in that choose_plants() picked.
Plan make_plan(const Build&, std::vector<Selection> selections = {});

// All that the plan says but its findings, in the order of the numbers.
void fields(const Build&, const Plan&, FieldSink&);

// The same and the findings as stable text.
std::string dump(const Build&, const Plan&);

}  // namespace loamsheet
