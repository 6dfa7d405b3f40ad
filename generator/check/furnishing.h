// furnishing: what stands in the tank or is fixed in it, with its shape, as checked.
#pragma once
#include <optional>
#include <string>

#include "base/span.h"
#include "base/units.h"
#include "check/climate.h"
#include "kinds/fixing.h"
#include "kinds/furnishing.h"
#include "kinds/one_of.h"

namespace loamsheet {

// Measures that the spec does not state are zero. `at` is the middle of a thing, its z only of one
// that is fixed above the ground; `from` and `to` are the ends of one that spans from place to
// place.
struct Furnishing {
  std::string id;
  OneOf<FurnishingKind> kind;
  Position at, from, to;
  Millimetres width, depth, height;  // width: of a tube its length
  Millimetres diameter;
  double turned = 0;                            // degrees to the left, seen from above
  Litres pocket;                                // for planting, of a ledge
  bool stands = false;                          // otherwise it is fixed
  std::optional<OneOf<FixingKind>> fixed_by{};  // where stated
  std::optional<Kilograms> mass{};              // as stated
  Span where;

  // Each with the key of the spec that it is from; a width goes before a length.
  template <class Visit>
  void keys(Visit visit) {
    visit("id", id), visit("kind", kind);
    visit("at", at), visit("from", from), visit("to", to);
    visit("length", width), visit("width", width), visit("depth", depth), visit("height", height);
    visit("diameter", diameter), visit("turned", turned), visit("pocket", pocket);
    visit("fixed_by", fixed_by), visit("mass", mass);
  }
};

}  // namespace loamsheet
