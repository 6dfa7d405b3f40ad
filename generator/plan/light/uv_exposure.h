// uv_exposure: the UV that an animal meets in the tank.
#pragma once
#include "plan/light/light.h"
#include "plan/light/uv_field.h"

namespace loamsheet {

bool is_uv(const Lamp&);

// Where an animal's back is when it basks: over a basking spot; else on whatever lies right under
// the UV lamp that gives it most. What lives in trees rests no lower than two thirds of the height.
Position basking_back(const Build&, const UvField&, const Animal&);

// Of an animal whose zone is known.
UvPlan uv_exposure(const Build&, const UvField&, size_t animal);

// A Ferguson zone of 1 to 4 is known.
bool has_uv_zone(const Animal&);

}  // namespace loamsheet
