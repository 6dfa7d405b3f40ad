// supports: what stands under a raised floor, and what fixings hold.
#pragma once
#include <optional>
#include <string>
#include <vector>

#include "base/units.h"
#include "kinds/fixing.h"
#include "kinds/one_of.h"

namespace loamsheet {

class FieldSink;
struct Build;
struct LayersPlan;

// What stands under a raised floor: its supports share the wet load above it evenly.
struct SupportsPlan {
  Millimetres spacing;
  int count = 0;
  Kilograms load;  // on one of them
};
void fields(const SupportsPlan&, FieldSink&);
std::optional<SupportsPlan> plan_supports(const Build&, const LayersPlan&);

// What a fixing has to bear: the thing, its pocket filled and wet, and the heaviest animal landing
// on it, which bears down with twice its weight (a load applied suddenly: strength of materials).
struct FixedLoad {
  std::string id;
  std::optional<OneOf<FixingKind>> fixed_by;
  std::optional<Kilograms> own;
  Kilograms pocket, landing;
  Kilograms sum() const { return own.value_or(Kilograms{}) + pocket + landing; }
};
void fields(const FixedLoad&, FieldSink&);
std::vector<FixedLoad> plan_fixed(const Build&);

}  // namespace loamsheet
