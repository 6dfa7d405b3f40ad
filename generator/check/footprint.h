// footprint: the floor of the spec as a figure.
#pragma once
#include "base/geometry.h"
#include "check/checking.h"

namespace loamsheet {

struct Floor {
  OneOf<FloorShape> shape;
  Region region;  // no corners when it could not be made
};

// `footprint` is the node of that name. Reports shapes that cannot be.
Floor floor_of(Checking&, const Node& footprint);

}  // namespace loamsheet
