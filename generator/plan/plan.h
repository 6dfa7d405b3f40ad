// plan: what follows from a checked build - volumes, masses, water, findings.
// In: Build. Out: Plan. Pure: no files, no clock, no locale, no words, no positions on paper.
//
// Two steps, because one build is looked at many ways: decide once, evaluate for each scenario,
// sweep over the corners of what is uncertain. A printed range holds for those scenarios.
#pragma once
#include <optional>
#include <string>
#include <utility>
#include <variant>
#include <vector>

#include "base/geometry.h"
#include "base/span.h"
#include "base/units.h"
#include "check/build.h"

namespace loamsheet {

// Numbers of a finding, by slot name; the words come from the templates.
using FindingArg = std::variant<std::string, int, Millimetres, Litres, Kilograms, Fraction,
                                Range<Millimetres>, Range<Litres>>;

enum class Weight { stop, caution, note };

struct Finding {
  Weight weight = Weight::note;
  std::string rule;                                    // "layers-above-sill"
  Span where;
  std::vector<std::pair<std::string, FindingArg>> args;
};

enum class Status { cleared, provisional, not_cleared };

struct DrainagePlan {
  Litres volume, buy, voids;
  Range<Kilograms> dry;
};

struct SeparatorPlan {
  SquareMetres area;
  Millimetres cut_width, cut_depth;
};

struct PartPlan {
  std::string material;
  Litres volume, buy;
  Range<Kilograms> dry;
};

struct SubstratePlan {
  Litres volume, buy;
  Range<Kilograms> dry;
  std::vector<PartPlan> parts;
};

struct LitterPlan {
  Litres volume, buy;
  Range<Kilograms> dry;
};

// Heights above the inside floor where each layer's top lies.
struct Profile {
  Millimetres drainage_top;
  Millimetres substrate_front, substrate_back;         // top of the substrate
  Millimetres litter_front, litter_back;               // top of the litter
};

struct LayersPlan {
  std::optional<DrainagePlan> drainage;
  std::optional<SeparatorPlan> separator;
  SubstratePlan substrate;
  std::optional<LitterPlan> litter;
  Profile profile;
};

// What is settled once, whatever the uncertain inputs turn out to be.
struct Decisions {
  LayersPlan layers;
  Kilograms empty;
  Millimetres highest_standing;    // highest water level that keeps the air gap under the mesh
};

// One point in what is uncertain: for each Build::unknowns a place from 0 (low) to 1 (high).
struct Scenario {
  std::vector<double> at;
};

struct Result {
  Litres first_watering;
  Millimetres standing;
  Kilograms dry, wet;
};

struct MassPlan {
  Kilograms empty;
  Range<Kilograms> dry, wet;
  std::optional<Range<Kilograms>> stand_margin;
};

struct WaterPlan {
  Range<Litres> first_watering;
  Range<Millimetres> standing;
  Millimetres highest_standing;
};

struct PullItem {
  std::string item;                // material id
  double need = 0;
  std::string unit;                // L, m2, kg, piece
};

struct Plan {
  Status status = Status::cleared;
  SquareMetres footprint_area;
  Millimetres footprint_perimeter;
  LayersPlan layers;
  MassPlan mass;
  WaterPlan water;
  std::vector<PullItem> pull_list;
  std::vector<Finding> findings;   // stops first, then cautions, then notes; in spec order
};

Decisions decide(const Build&);
Result evaluate(const Build&, const Decisions&, const Scenario&);

// All corners of the unknowns, and fixed samples inside.
std::vector<Scenario> scenarios(const Build&);
Range<double> sweep(const Build&, const Decisions&, double (*read)(const Result&));

Plan make_plan(const Build&);

// The plan as stable text.
std::string dump(const Plan&);

}  // namespace loamsheet
