// supplies: what the tasks of a build are done with, beside what goes into it.
#pragma once
#include <string>
#include <vector>

#include "check/build.h"
#include "plan/care/care.h"
#include "plan/shop/pull_item.h"

namespace loamsheet {

// The names of tools, of supplies and of uses of the pull list that the build's tasks need, each
// once, by name. The order and the calendar are planned before.
std::vector<std::string> task_needs(const Build&, const Scheduled&);

// The tools of the bench among such names, in the order of the rules.
std::vector<std::string> tools_among(const Build&, const std::vector<std::string>& needs);

// How much of a supply a build takes: its amount for each of what it is counted by.
double supply_needed(const Supply&, const Build&, const Scheduled&);

}  // namespace loamsheet
