#include <span>

#include "data/cells.h"
#include "data/csv.h"
#include "data/data.h"

namespace loamsheet {
namespace {

// What a column shows: of the item in every line or in its first alone, of its packing in the
// first alone, of each pack.
enum class Of { item, first, packing, pack };

struct Column {
  const char *head, *key;
  Of of;
};

constexpr Column columns[] = {
    {"item", "item", Of::item},
    {"need", "need", Of::first},
    {"unit", "unit", Of::item},
    {"for", "for", Of::item},
    {"packs", "count", Of::pack},
    {"pack", "sold", Of::pack},
    {"pack_unit", "sold_unit", Of::pack},
    {"price", "price", Of::pack},
    {"shelf", "shelf", Of::pack},
    {"missing", "missing", Of::packing},
    {"left_over", "left_over", Of::packing},
};
using Columns = std::span<const Column>;
constexpr Columns unstocked = Columns(columns).first(3);

// One line of an item: of a pack, its first or another, or of an item without packs.
struct Line {
  const Cells& item;
  const Pack* pack = nullptr;
  bool first = true;
};

std::string cell(const Column& column, const Line& line, const Cells& pack) {
  if (column.of == Of::pack) return pack.at(column.key);
  if (column.of == Of::packing && !line.pack) return "";
  return column.of == Of::item || line.first ? line.item.at(column.key) : "";
}

std::string written(Columns shown, const Line& line) {
  Cells pack;
  if (line.pack) fields(*line.pack, pack);
  std::vector<std::string> cells;
  for (const Column& column : shown) cells.push_back(cell(column, line, pack));
  return csv_line(cells);
}

std::string head(Columns shown) {
  std::vector<std::string> names;
  for (const Column& column : shown) names.push_back(column.head);
  return csv_line(names);
}

std::string lines(const PullItem& item, bool stocked) {
  Cells cells;
  fields(item, stocked, cells);
  if (!stocked) return written(unstocked, {cells});
  if (item.packs.empty()) return written(columns, {cells});
  std::string out;
  for (const Pack& pack : item.packs) {
    out += written(columns, {cells, &pack, &pack == &item.packs.front()});
  }
  return out;
}

}  // namespace

std::string pull_list_csv(const PlannedBuild& p) {
  const bool stocked = p.build.stock.has_value();
  std::string out = head(stocked ? Columns(columns) : unstocked);
  for (const PullItem& item : p.plan.pull_list) out += lines(item, stocked);
  return out;
}

}  // namespace loamsheet
