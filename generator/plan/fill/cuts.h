// cuts: pieces of sheet goods.
#pragma once
#include <optional>
#include <string>
#include <vector>

#include "base/units.h"

namespace loamsheet {

class FieldSink;
struct Build;
struct LayersPlan;
struct WaterAreaPlan;

// Pieces of one size to cut from sheet goods.
struct Cut {
  std::string use, material;
  int count = 1;
  Millimetres width, depth;
  std::optional<Millimetres> overlap;  // of neighbouring strips
};
void fields(const Cut&, FieldSink&);
std::vector<Cut> plan_cuts(const Build&, const LayersPlan&, const std::optional<WaterAreaPlan>&);

// The area of all pieces of one use.
SquareMetres cut_area(const std::vector<Cut>&, const std::string& use);

}  // namespace loamsheet
