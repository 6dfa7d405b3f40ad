#include "figure/scale.h"

#include <array>

namespace loamsheet {

std::span<const int> preferred_scales() {
  static constexpr std::array scales{1, 2, 5, 10, 20, 50, 100, 200, 500, 1000};
  return scales;
}

}  // namespace loamsheet
