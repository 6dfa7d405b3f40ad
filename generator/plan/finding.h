// finding: what is wrong or worth knowing about a build, as a rule with its numbers.
#pragma once
#include <optional>
#include <string>
#include <utility>
#include <variant>
#include <vector>

#include "base/date.h"
#include "base/span.h"
#include "base/units.h"

namespace loamsheet {

// Numbers of a finding, by slot name; the words come from the templates.
using FindingArg = std::variant<std::string, int, double, Date, Millimetres, SquareMetres, Litres,
                                Kilograms, Celsius, Fraction, Range<Millimetres>, Range<Litres>,
                                Range<Kilograms>, Range<Celsius>, Range<Fraction>>;

enum class Weight { stop, caution, note };

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
  std::vector<std::pair<std::string, FindingArg>> args;
  std::optional<TakenOn> taken_on = std::nullopt;  // only of a caution
  std::vector<StandIn> stand_ins = {};             // nearest first, those in stock before others
};

}  // namespace loamsheet
