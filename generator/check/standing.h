// standing: what stands in the layers.
#pragma once
#include <optional>
#include <string>

#include "base/geometry.h"
#include "base/span.h"
#include "base/units.h"
#include "kinds/furnishing.h"
#include "kinds/one_of.h"

namespace loamsheet {

class FieldSink;

// A solid thing that takes up room in the layers because it stands on the base.
struct Standing {
  std::string id;
  Point at;
  SquareMetres base;
  Millimetres height;
  std::optional<Kilograms> mass;
  bool on_base = false;
  Span where;
  OneOf<FurnishingKind> kind{};  // as of its furnishing
  bool filled = false;           // one on its side that the layers fill takes up no room
};
void fields(const Standing&, FieldSink&);

}  // namespace loamsheet
