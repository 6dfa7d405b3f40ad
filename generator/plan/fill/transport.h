// transport: the tank as it is moved.
#pragma once
#include <optional>
#include <string>
#include <vector>

#include "base/date.h"
#include "base/units.h"

namespace loamsheet {

class FieldSink;
struct Build;
struct Decisions;

// As it is moved: drained, loose stone out, layers at field capacity.
struct TransportPlan {
  std::optional<Date> date;
  Range<Kilograms> mass;
  Kilograms taken_out;              // stones that stand loose
  std::vector<std::string> stones;  // their ids
};
void fields(const TransportPlan&, FieldSink&);
std::optional<TransportPlan> plan_transport(const Build&, const Decisions&);

}  // namespace loamsheet
