// examples: builds and plans by hand, and the words of templates/en, for the figure tests.
#pragma once
#include <string>

#include "figure/figure.h"
#include "world/world.h"

namespace loamsheet::examples {

// Everything make_figures looks at, in one place.
struct Example {
  Build build;
  Plan plan;
};

struct Size {
  Millimetres width, depth, height;
};

// A glass tank with expanded clay (50 mm) under fibreglass mesh, woodland mix from 50 to 80 mm,
// oak leaves, water in the drainage, a mesh lid at the back, a slot and doors in front.
Example humid(const Size& = {900_mm, 450_mm, 600_mm});

// Deep sand from 180 to 250 mm (less in a low tank), nothing else; mesh vents left and right, a
// mesh top.
Example arid(const Size& = {1200_mm, 600_mm, 600_mm});

// Another footprint for an example.
void reshape(Example&, OneOf<FloorShape>, Region);

// The profile and depths of the plan, from the build's layers.
void settle(Example&);

Wording words(UnitSystem = UnitSystem::metric);
const Typefaces& faces();

}  // namespace loamsheet::examples
