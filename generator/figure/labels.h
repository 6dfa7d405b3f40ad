// labels: names beside a view, in one column, joined to what they name by leaders that never
// cross.
#pragma once
#include "figure/sketch.h"

namespace loamsheet {

// Something in a view that has a name: where the leader's dot lies, and what is said.
struct Target {
  Point at;
  std::string name;    // bold, first line
  std::string detail;  // may be empty
  double slack = 0;    // mm that the dot may move up or down and still lie on the thing
};

struct LabelLimits {
  double bottom = 0, top = 0;
};

// Where the labels stand.
struct Column {
  double edge = 0;    // leaders run level up to here, then slant
  double left = 0;    // left end of the text
  double width = 34;  // lines wrap within this
  LabelLimits limits;
};

struct LabelPiece {
  double wanted, height;  // centre
};

// Centres of the pieces, as near to the wanted ones as they can be (least squares) while keeping
// `gap` between them and within the limits, as far as they fit. `wanted` runs downwards.
std::vector<double> spread(const std::vector<LabelPiece>&, double gap, const LabelLimits&);

// Labels and leaders of all targets.
Marks place_labels(const Typefaces&, const Lettering&, std::vector<Target>, const Column&);

}  // namespace loamsheet
