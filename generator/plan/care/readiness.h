// readiness: the earliest day on which the animal may go in.
#pragma once
#include "check/build.h"
#include "plan/care/care.h"
#include "plan/care/constants.h"

namespace loamsheet {

// Never under `constants::days_empty` after planting or, when the tank was moved, after the move;
// later by the readiness rules that apply. The day holds only when the readiness is signed.
Ready plan_ready(const Build&);

}  // namespace loamsheet
