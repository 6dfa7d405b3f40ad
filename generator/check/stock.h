// stock: the shop's packs of what the catalogue knows, as checked.
#pragma once
#include <optional>
#include <string>

#include "base/money.h"
#include "base/span.h"

namespace loamsheet {

// Packs of one size of one item; `unit` is L, kg, m2 or piece.
struct StockedPack {
  std::string item, unit;
  double size = 0;
  std::optional<Money> price;  // net, of one pack
  int on_hand = 0;
  std::string shelf;  // may be empty
  Span where;
};

}  // namespace loamsheet
