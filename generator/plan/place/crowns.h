// crowns: the room that a plant takes up where it stands.
#pragma once
#include "plan/light/crown.h"
#include "plan/place/needs.h"
#include "plan/place/sites.h"

namespace loamsheet {

// The crown that a plant has where it stands.
Crown crown_of(const Needs&, const Site&);

}  // namespace loamsheet
