// tank: the enclosure and its layers in millimetres on paper, as the views draw them. The origin
// of a view is the inside floor at the left (front view) or at the front (side section).
#pragma once
#include "figure/labels.h"

namespace loamsheet {

struct Tank {
  Tank(const FigureInput& input, int one_to) : in(input), scale(one_to) {}

  const FigureInput& in;
  double scale;                             // drawn at 1:scale
  double width = 0, depth = 0, height = 0;  // inside
  double wall = 0;                          // as drawn: never under a wide line
  double drainage = 0;                      // tops of the layers above the inside floor
  double substrate_front = 0, substrate_back = 0, litter_front = 0, litter_back = 0;
  double background = 0;
  double standing_low = 0, standing_high = 0, highest = 0;  // water levels, 0: none
  LabelLimits land;  // of x: the floor beside the water area, if any

  double paper(Millimetres v) const { return v.v / scale; }
  double x(double real) const;           // place in the front view of a spec's x
  double y(double real) const;           // place in the side section of a spec's y
  double surface(double paper_y) const;  // top of the litter or substrate, at a section's y
};

Tank tank_at(const FigureInput&, int scale);

// A view's marks, and what in it has a name.
struct Drawing {
  Marks marks;
  std::vector<Target> targets;
};

// How much the labels say: names with details, names alone, or the names of the layers and the
// water alone.
enum class Naming { full, names, layers_only };

// The front view: walls and layers cut just behind the front, what lies behind seen.
Drawing front_view(const Tank&, Naming);

// The side section, front at the left, up to `limit` above the floor: below the full height a
// break line ends it.
Marks side_section(const Tank&, double limit);

// A wall cut through: solid when thin, otherwise outlined and hatched.
Marks cut_wall(const Box&);

// Layers cut through between two places along a view. `front` and `back` are the heights at them.
struct Slope {
  LabelLimits along;
  double left, right;
};
Marks cut_drainage(const Tank&, const LabelLimits& along);
Marks cut_substrate(const Tank&, const Slope& top);
Marks cut_litter(const Tank&, const Slope& bottom, const Slope& top);
Marks separator(const Tank&, const LabelLimits& along);
Marks water_level(double level, const LabelLimits& along, double sign_at);

}  // namespace loamsheet
