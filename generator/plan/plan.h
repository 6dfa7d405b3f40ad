// plan: what follows from a checked build - volumes, masses, water, findings.
// In: Build. Out: Plan. Pure: no files, no clock, no locale, no words, no positions on paper.
#pragma once
#include <optional>
#include <string>
#include <vector>

#include "base/date.h"
#include "base/geometry.h"
#include "base/units.h"
#include "check/build.h"
#include "plan/finding.h"

namespace loamsheet {

enum class Status { cleared, provisional, not_cleared };

// A raised floor is all voids and is bought by area: it has no bought volume and no dry mass.
struct DrainagePlan {
  Litres volume, voids;
  std::optional<Litres> buy;
  std::optional<Range<Kilograms>> dry;
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
  Millimetres substrate_front, substrate_back;  // top of the substrate
  Millimetres litter_front, litter_back;        // top of the litter
};

struct LayersPlan {
  std::optional<DrainagePlan> drainage;
  std::optional<SeparatorPlan> separator;
  SubstratePlan substrate;
  std::optional<LitterPlan> litter;
  Profile profile;
};

struct MassPlan {
  Kilograms empty;
  Range<Kilograms> dry, wet;
  std::optional<Range<Kilograms>> stand_margin;
};

// Nothing where it does not apply: an arid build is not watered through; without a drainage
// layer no water stands.
struct WaterPlan {
  std::optional<Range<Litres>> first_watering;
  std::optional<Range<Millimetres>> standing;
  std::optional<Millimetres> highest_standing;  // level that keeps the air gap under the mesh
};

// The earliest day on which the animal may go in; it holds only when the readiness is signed.
struct Ready {
  Date earliest;
  int days = 0;                      // counted from the day of planting
  std::vector<std::string> because;  // ids: "after-planting", "after-move"
};

struct PullItem {
  std::string use;   // background, drainage, separator, substrate, litter
  std::string item;  // material id
  double need = 0;
  std::string unit;  // L, m2, kg, piece
};

struct Plan {
  Status status = Status::cleared;
  SquareMetres footprint_area;
  Millimetres footprint_perimeter;
  LayersPlan layers;
  MassPlan mass;
  WaterPlan water;
  std::vector<PullItem> pull_list;
  Ready ready;
  std::vector<Finding> findings;  // stops first, then cautions, then notes; in spec order
};

Plan make_plan(const Build&);

// The plan as stable text.
std::string dump(const Plan&);

}  // namespace loamsheet
