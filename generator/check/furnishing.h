// furnishing: what stands in the tank or is fixed in it, with its shape, as checked.
#pragma once
#include <optional>
#include <string>

#include "base/span.h"
#include "base/units.h"
#include "check/climate.h"

namespace loamsheet {

// Measures that the spec does not state are zero. `at` is the middle of a thing, its z only of one
// that is fixed above the ground; `from` and `to` are the ends of a branch.
struct Furnishing {
  std::string id, kind;  // tube, branch, ledge, water-bowl, stone, hide, laying-box, ...
  Position at, from, to;
  Millimetres width, depth, height;  // width: of a tube its length
  Millimetres diameter;
  double turned = 0;                // degrees to the left, seen from above
  Litres pocket;                    // for planting, of a ledge
  bool stands = false;              // otherwise it is fixed
  std::string fixed_by{};           // silicone | foam | magnet | wedged | screws; may be empty
  std::optional<Kilograms> mass{};  // as stated
  Span where;
};

}  // namespace loamsheet
