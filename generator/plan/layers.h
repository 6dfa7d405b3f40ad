// layers: what each layer of the tank takes up, holds and weighs dry, and what to buy for it.
#pragma once
#include "base/units.h"
#include "check/build.h"
#include "plan/ground.h"
#include "plan/plan.h"

namespace loamsheet {

// The heights of the layers' tops at the front and at the back of the footprint's box.
Profile profile(const Build&);

// The vertical depth of the substrate at y: linear from the front to the back of the box, or that
// of the terrace there.
Millimetres substrate_depth(const Build&, double y);

// The deepest that the substrate is anywhere.
Millimetres deepest(const SubstrateLayer&);

// All layers, exactly: area times depth at the centroid, strip by strip on terraces, less what
// stands in them. Moss takes its share of the land from the litter.
LayersPlan plan_layers(const Build&, const Ground&);

// What the water area holds, less what stands in it.
Litres water_in_area(const Build&, const Ground&);

}  // namespace loamsheet
