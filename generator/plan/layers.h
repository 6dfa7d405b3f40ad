// layers: what each layer of the tank takes up, holds and weighs dry, and what to buy for it.
#pragma once
#include "base/units.h"
#include "check/build.h"
#include "plan/ground.h"
#include "plan/plan.h"

namespace loamsheet {

// The heights of the layers' tops at the front and at the back of the footprint's box.
Profile profile(const Build&);

// The vertical depth of the substrate at y: linear from the front to the back of the box.
Millimetres substrate_depth(const Build&, double y);

// All layers, exactly: area times depth at the centroid, less what stands in them.
LayersPlan plan_layers(const Build&, const Ground&);

// What the water area holds, less what stands in it.
Litres water_in_area(const Build&, const Ground&);

}  // namespace loamsheet
