// bulk: a material of a layer with the constants that the plan needs of it.
#pragma once
#include <string>

#include "check/checking.h"

namespace loamsheet {

// How a substrate goes in; `unknown` is the position of its "?" in Build::unknowns, -1 without.
struct Placed {
  enum class How { dry, damp, unknown } how = How::damp;
  int unknown = -1;
};

// Reports, at `where`, each constant that the material lacks.
Bulk drainage_bulk(Checking&, const Material&, const Span& where);
Bulk substrate_bulk(Checking&, const Material&, const Placed&, const Span& where);
Bulk litter_bulk(Checking&, const Material&, const Span& where);

}  // namespace loamsheet
