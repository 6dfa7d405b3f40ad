// conditions: what holds for a build, by the names that rules use (task_conditions()).
#pragma once
#include <string>

#include "check/build.h"

namespace loamsheet {

// False for a name that is none.
bool condition_holds(const std::string& name, const Build&);

// All of a rule's "if" hold and none of its "unless" does.
bool applies(const Conditions&, const Build&);

}  // namespace loamsheet
