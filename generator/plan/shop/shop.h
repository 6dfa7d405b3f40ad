// shop: what is fetched from the shelf, in which packs and at what price, and who lifts what.
#pragma once
#include <optional>
#include <string>
#include <vector>

#include "base/finding.h"
#include "base/money.h"
#include "check/build.h"
#include "plan/care/care.h"
#include "plan/shop/lift.h"
#include "plan/shop/pull_item.h"
#include "plan/shop/quote.h"

namespace loamsheet {

// What is known once everything is on the list.
struct Shopped : Scheduled {
  std::vector<PullItem> pull_list;
  std::vector<std::string> tools;  // of the bench, that the tasks need
  std::optional<Quote> quote;
  std::optional<LiftPlan> lift;
  std::optional<SackLift> sack;
};

// Fills the pull list with its packs, the tools, the quote and the lifts, once the order and the
// calendar say what is done.
void add_shopping(const Build&, Shopped&);

// Who lifts what; the pull list and the tools.
void fields_of_lift(const Shopped&, FieldSink&);
void fields_of_list(const Build&, const Shopped&, FieldSink&);

// What the shelf does not hold, and what has no price.
Found stock_findings(const Build&, const Shopped&);

// Who may lift the heaviest sack, and the empty tank.
Found sack_findings(const Build&, const Shopped&);
Found lift_findings(const Build&, const Shopped&);

// In the order in which it goes in, then what the tasks need besides. Bought volumes; meshes, moss,
// backgrounds and raised floors by area; what comes by the piece by its kind. The planting, the
// order and the calendar are planned before.
std::vector<PullItem> pull_list(const Build&, const Scheduled&);

// Furnishings, equipment, water and supplies, which a keeper or the bench may have already.
bool may_be_there(const PullItem&);

}  // namespace loamsheet
