// fill: what goes into the tank - layers, masses, the first watering; what is marked, cut, dosed,
// held up and moved. Pure functions of a build.
#pragma once
#include <optional>
#include <vector>

#include "base/finding.h"
#include "base/units.h"
#include "check/build.h"
#include "plan/fill/cuts.h"
#include "plan/fill/doses.h"
#include "plan/fill/ground.h"
#include "plan/fill/marks.h"
#include "plan/fill/quantities.h"
#include "plan/fill/supports.h"
#include "plan/fill/transport.h"
#include "plan/fill/water_area.h"

namespace loamsheet {

struct Build;
struct Decisions;

// What is known once the layers are worked out. Each room's struct adds to that of the room before.
struct Filling {
  SquareMetres footprint_area;
  Millimetres footprint_perimeter;
  LayersPlan layers;
  MassPlan mass;
  WaterPlan water;
  std::vector<TapeMark> marks;
  std::vector<Cut> cuts;
  std::optional<SupportsPlan> supports;
  std::vector<DosePlan> doses;
  std::vector<CrewPlan> crew;
  std::vector<FixedLoad> fixed;
  std::optional<WaterAreaPlan> water_area;
  std::optional<TransportPlan> transport;
};
Filling plan_filling(const Build&, const Decisions&);

// What is told of it before and after what the other rooms add.
void fields_of_layers(const Filling&, FieldSink&);
void fields_of_goods(const Filling&, FieldSink&);

// Layers against openings, height and slope; what stands in them.
Found layer_findings(const Build&, const Filling&);

// What holds the steps of a terraced substrate.
Found terrace_findings(const Build&);

// Drainage and the water that stands in it.
Found drainage_findings(const Build&, const Filling&);

// What the stand and the tank's base bear.
Found tank_findings(const Build&, const Filling&);

// Doses and cultures; fixings; the water area's fittings.
Found dose_findings(const Build&, const Filling&);
Found fixing_findings(const Build&, const Filling&);

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
