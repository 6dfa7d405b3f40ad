// marks: where tape goes on the outside of the glass.
#pragma once
#include <optional>
#include <string>
#include <vector>

#include "base/units.h"

namespace loamsheet {

class FieldSink;
struct Build;
struct LayersPlan;
struct WaterPlan;

// Where to put tape on the outside of the glass: heights above the lower edge of the base, which
// lies its thickness below the inside floor.
struct TapeMark {
  std::string layer;  // drainage, waterline, substrate, terrace, litter, water
  Millimetres front, back;
  std::optional<Millimetres> from{};  // of a terrace: from so far behind the front on
};
void fields(const TapeMark&, FieldSink&);
std::vector<TapeMark> plan_marks(const Build&, const LayersPlan&, const WaterPlan&);

}  // namespace loamsheet
