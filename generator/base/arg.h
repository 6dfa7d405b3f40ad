// arg: what may fill a slot of a sentence; the words come from the templates.
#pragma once
#include <string>
#include <utility>
#include <variant>
#include <vector>

#include "base/date.h"
#include "base/units.h"

namespace loamsheet {

// Strings go in as they are; amounts are written in the sheet's units. A Range is written once when
// both ends read the same, otherwise as "low–high unit".
using AnyArg = std::variant<std::string, int, double, Date, Millimetres, SquareMetres, Litres,
                            Kilograms, Celsius, Fraction, Days, Range<Millimetres>, Range<Litres>,
                            Range<Kilograms>, Range<Celsius>, Range<Fraction>>;

// A struct of its own, whose copying is compiled once: sentences and findings are made everywhere.
struct Arg : AnyArg {
  using AnyArg::AnyArg;
  Arg(const Arg&);
  Arg(Arg&&) noexcept;
  Arg& operator=(const Arg&);
  Arg& operator=(Arg&&) noexcept;
  ~Arg();
};

// By the names of the slots.
using Args = std::vector<std::pair<std::string, Arg>>;

}  // namespace loamsheet
