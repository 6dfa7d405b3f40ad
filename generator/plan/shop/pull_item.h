// pull_item: what to take from the shelf, in which packs.
#pragma once
#include <optional>
#include <string>
#include <vector>

#include "base/money.h"

namespace loamsheet {

class FieldSink;

struct Pack {
  double size = 0;  // in the unit of the need
  int count = 0;
  double sold = 0;  // as the stock list has it, in `sold_unit`
  std::string sold_unit{};
  std::optional<Money> price{};  // net, of one
  std::string shelf{};
};
void fields(const Pack&, FieldSink&);

struct PullItem {
  std::string use;   // one of pull_uses()
  std::string item;  // id of a material, a plant or a crew species
  double need = 0;
  std::string unit;            // L, m2, kg, piece
  std::vector<Pack> packs;     // whole packs that cover the need; empty without stock
  std::optional<Money> price;  // net, of those packs; nothing where one has no price
  double missing = 0;          // of the need, beyond what is on hand
  double left_over = 0;        // of the packs, beyond the need
};

// Of a build with a stock list, or without one.
void fields(const PullItem&, bool stocked, FieldSink&);

}  // namespace loamsheet
