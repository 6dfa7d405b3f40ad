#include "check/stock.h"

#include <set>

#include "base/text.h"
#include "check/checking.h"
#include "check/names.h"

namespace loamsheet {
namespace {

std::vector<std::string> known_items(const Checking& c) {
  std::vector<std::string> ids = c.materials.ids();
  for (const Shelf* shelf : {&c.catalogue.plants, &c.catalogue.crew}) {
    for (std::string& id : shelf->ids()) ids.push_back(std::move(id));
  }
  return ids;
}

// A shop sells more than vivaria need, so only an item that looks like a slip is spoken of.
void look_for_slip(Checking& c, const StockLine& line, const std::vector<std::string>& known) {
  const auto near = closest(line.item, known);
  if (!near || *near == line.item) return;
  c.error({.severity = Severity::warning,
           .where = line.where,
           .message = "'" + line.item + "' is in the stock list but not in the catalogue",
           .hint = "did you mean '" + *near + "'?",
           .edit = Edit{line.where, *near}});
}

}  // namespace

void check_stock(Checking& c, const Stock& stock) {
  const std::vector<std::string> known = known_items(c);
  const std::set<std::string> ids(known.begin(), known.end());
  std::vector<StockedPack> packs;
  for (const StockLine& line : stock.lines) {
    if (!ids.contains(line.item)) look_for_slip(c, line, known);
    packs.push_back(
        {line.item, line.unit, line.pack, line.price, line.on_hand, line.shelf, line.where});
  }
  c.build.stock = std::move(packs);
  c.build.stock_at = place_of(c.root, "stock");
}

}  // namespace loamsheet
