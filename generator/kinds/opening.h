// opening: the kinds of opening, a row each.
#pragma once
#include <span>
#include <string_view>

namespace loamsheet {

struct OpeningKind {
  std::string_view id;
  std::string_view keys;
  std::string_view open, meshed;  // figure.NAME and figure.NAME-from say what it is in drawings
  bool swings = false;  // a leaf as high as its wall, which sweeps the floor before it and breathes
                        // through the gap along its edge; else air passes its area

  static std::span<const OpeningKind> all();
};

}  // namespace loamsheet
