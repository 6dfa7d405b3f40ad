// dimension: lengths after ISO 129-1:2018. Narrow continuous lines, a gap before extension lines,
// oblique strokes as ends (they fit where arrowheads do not), the value above and parallel to the
// line; where it does not fit, outside on a leader.
#pragma once
#include "figure/sketch.h"

namespace loamsheet {

// A length as dimensions write it, without unit: millimetres ("62.5"), or inches to the nearest
// sixteenth in lowest terms ("24 9/16"). A value as given in the other system keeps no more than
// one decimal.
std::string dimension_text(Millimetres, UnitSystem);

struct Measured {
  double from, to;  // paper mm along the direction measured
  std::string value;
};

// Where a dimension line lies: its fixed coordinate, and where the extension lines start.
struct DimensionLine {
  double at, object;
};

struct Dimensioner {
  const Typefaces& type;
  double size;  // points

  // Below an object, from left to right.
  Marks level(const Measured&, const DimensionLine&) const;

  // Beside an object, upwards: a chain of one or more. Values stand left of the line; `at` left
  // of `object` or right of it.
  Marks upright(const std::vector<Measured>&, const DimensionLine&) const;
};

}  // namespace loamsheet
