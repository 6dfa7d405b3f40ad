// scenario: one build looked at many ways. What must be settled is decided once; each scenario is
// one point in what is uncertain; a sweep over the scenarios gives the ranges that are printed.
// A printed range holds for those scenarios, no more.
#pragma once
#include <cstddef>
#include <optional>
#include <vector>

#include "base/units.h"
#include "check/build.h"
#include "plan/fill/quantities.h"

namespace loamsheet {

// What is settled once, whatever the uncertain inputs turn out to be.
struct Decisions {
  LayersPlan layers;
  Litres water_area;  // what the water area holds
  Kilograms dam;      // of the water area
  Kilograms empty;
  std::optional<Millimetres> highest_standing;  // as in WaterPlan
};

// One point in what is uncertain, each a place from 0 (low) to 1 (high): one for each of
// Build::unknowns, and where the catalogue's own ranges of known materials are taken.
struct Scenario {
  std::vector<double> at;
  double density = 0.5, moisture = 0.5;
};

struct Result {
  Litres first_watering;
  Millimetres standing;
  Kilograms dry, wet;
  Kilograms moved;     // drained, loose stone out
  double strokes = 0;  // seconds of the pump, or pulls, for a litre; 0 without a mister
};

Decisions decide(const Build&);
Result evaluate(const Build&, const Decisions&, const Scenario&);

// Up to eight unknowns: all corners, and fixed samples inside. More: the corners with all unknowns
// moving as one, each alone low and high with the others in the middle, and the samples.
std::vector<Scenario> scenarios(const Build&);

// The lowest and highest of one number over all scenarios.
Range<double> sweep(const Build&, const Decisions&, double (*read)(const Result&));

// Whether a printed number depends on the unknown with this position in Build::unknowns.
bool matters(const Build&, const Decisions&, std::size_t unknown);

}  // namespace loamsheet
