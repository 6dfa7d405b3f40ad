// dimensioned: parts of a view with its dimensions, for the figures that show it.
#pragma once
#include "figure/dimension.h"
#include "figure/tank.h"

namespace loamsheet {

// mm on paper.
inline constexpr double first_line = 5.0;  // from an object to its first dimension line
inline constexpr double level_line = 5.8;  // from the floor to the width's line

// A length of the view, told at full size.
Measured measured(const Tank&, double from, double to);

// The word `key` over the upper left corner of a view.
Marks view_heading(const Tank&, const Lettering&, const char* key, double top);

// The depths of the layers at the left of a view: in front.
Marks layer_depths(const Tank&, const Lettering&);

// The height up to which a section shows all layers and no more.
double above_layers(const Tank&);

// The side section up to `limit`: the width under it, what the front view cannot show beside it,
// and which way it looks.
Marks dimensioned_section(const Tank&, const Lettering&, double limit);

}  // namespace loamsheet
