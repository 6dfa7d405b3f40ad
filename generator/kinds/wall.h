// wall: what the walls of a tank are made of, a row each. What such a sheet weighs is in the
// catalogue, with the other materials.
#pragma once
#include <span>
#include <string_view>

namespace loamsheet {

struct WallMaterial {
  std::string_view id;  // also that of the catalogue's material
  double conducts = 0;  // heat, W/(m K)
  double clear = 0;     // the share of light that a pane lets through

  static std::span<const WallMaterial> all();
};

}  // namespace loamsheet
