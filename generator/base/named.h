// named: the names of an enum's values, each beside its value, so that no order has to be kept.
#pragma once
#include <algorithm>
#include <iterator>
#include <stdexcept>

namespace loamsheet {

// What goes with one value of an enum: a name, a function.
template <class Enum, class What>
struct For {
  Enum value;
  What what;
};

template <class Enum, class What, size_t count>
const What& what_of(const For<Enum, What> (&table)[count], Enum value) {
  const auto found = std::find_if(std::begin(table), std::end(table),
                                  [&](const auto& row) { return row.value == value; });
  if (found == std::end(table)) throw std::out_of_range("a value without a row");
  return found->what;
}

}  // namespace loamsheet
