// heater: the kinds of heater, a row each. The first is the one that is proposed where heat lacks.
#pragma once
#include <span>
#include <string_view>

namespace loamsheet {

struct HeaterKind {
  std::string_view id;
  std::string_view item;    // on the pull list
  bool from_below = false;  // warms the ground; else what lies under it, as the sun does

  static std::span<const HeaterKind> all();
};

}  // namespace loamsheet
