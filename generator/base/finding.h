// finding: what is wrong or worth knowing about a build, as a rule with its numbers.
#pragma once
#include <optional>
#include <string>
#include <vector>

#include "base/arg.h"
#include "base/span.h"

namespace loamsheet {

class FieldSink;

enum class Weight { stop, caution, note };
std::string name_of(Weight);

// Who takes a caution on knowingly, and why.
struct TakenOn {
  std::string by, reason;
};

// A plant that could go in instead of one that fails.
struct StandIn {
  std::string species, name;
  bool in_stock = false;
};

struct Finding {
  Weight weight = Weight::note;
  std::string rule;  // "layers-above-sill"
  Span where;
  Args args;
  std::optional<TakenOn> taken_on = std::nullopt;  // only of a caution
  std::vector<StandIn> stand_ins = {};             // nearest first, those in stock before others
};
void fields(const Finding&, FieldSink&);

using Found = std::vector<Finding>;

// Puts more findings behind those that are there.
void append(Found& all, Found more);

}  // namespace loamsheet
