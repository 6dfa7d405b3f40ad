// stock: what a shop has on its shelves, from the CSV file that a spec names (RFC 4180). Columns,
// in any order: item,pack,unit,price,on_hand,shelf. A CSV file has no comments.
#pragma once
#include <optional>
#include <string>
#include <vector>

#include "base/diagnostic.h"
#include "base/money.h"
#include "base/span.h"
#include "base/world.h"

namespace loamsheet {

// Packs of one size of one item.
struct StockLine {
  std::string item;            // id of a material, plant or crew species
  std::string unit;            // what `pack` counts: L, kg, m2 or piece
  double pack = 0;             // in one pack
  std::optional<Money> price;  // net, of one pack
  int on_hand = 0;             // packs
  std::string shelf;           // may be empty
  Span where;                  // the item
};

struct Stock {
  std::string file;
  std::vector<StockLine> lines;
};

// The file of that path. One that cannot be read is reported at `named_at`, where the spec names
// it; what is wrong inside has its own line and column.
Outcome<Stock> read_stock(World&, const std::string& path, const Span& named_at);

}  // namespace loamsheet
