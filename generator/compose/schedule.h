// schedule: steps and dated tasks in words.
#pragma once
#include <string>

#include "catalogue/wording.h"
#include "plan/care/care.h"

namespace loamsheet {

// The sentence of a step, with its numbers.
std::string said(const Step&, const Wording&);

// The sentence of a dated task, the same in few words, and its amount; empty without one.
std::string said(const CalendarTask&, const Wording&);
std::string said_short(const CalendarTask&, const Wording&);
std::string said_amount(const CalendarTask&, const Wording&);

}  // namespace loamsheet
