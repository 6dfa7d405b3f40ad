// customer: the spec as a customer may have it.
#pragma once
#include <optional>
#include <string>
#include <utility>

#include "base/diagnostic.h"
#include "check/build.h"
#include "plan/plan.h"
#include "read/read.h"

namespace loamsheet {

// The text of the spec without the shop's own blocks (the stock list, the shop's catalogue) and
// without comments, under a first line that says so. A spec with two top-level keys on one line
// cannot be cut.
Outcome<std::string> customer_spec(const Spec&, const std::string& notice);

// The build and the plan as their reader may see them. A customer sees neither the stock list nor
// its packs and prices nor what follows from its counts, and the quote by groups.
class Shown {
 public:
  Shown(const Build&, const Plan&, bool to_customer);
  const Build& build() const { return cut_ ? cut_->first : build_; }
  const Plan& plan() const { return cut_ ? cut_->second : plan_; }

 private:
  const Build& build_;
  const Plan& plan_;
  std::optional<std::pair<Build, Plan>> cut_;
};

}  // namespace loamsheet
