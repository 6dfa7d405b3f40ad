// standing: what stands in the layers.
#pragma once
#include <optional>
#include <string>

#include "base/geometry.h"
#include "base/span.h"
#include "base/units.h"

namespace loamsheet {

// A solid thing that takes up room in the layers because it stands on the base.
struct Standing {
  std::string id;
  Point at;
  SquareMetres base;
  Millimetres height;
  std::optional<Kilograms> mass;
  bool on_base = false;
  Span where;
  std::string kind{};   // as of its furnishing
  bool tube = false;    // lies on its side, so its height is its diameter
  bool filled = false;  // a tube that the layers fill takes up no room
};

}  // namespace loamsheet
