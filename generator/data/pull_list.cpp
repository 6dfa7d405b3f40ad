#include "base/text.h"
#include "data/csv.h"
#include "data/data.h"
#include "data/json.h"

namespace loamsheet {
namespace {

std::string written(double v) {
  return significant(v, digits_written);
}

std::string written(const std::optional<Money>& amount) {
  return amount ? whole_decimal(*amount, 2) : "";
}

// One line for each size of pack; the item's own figures stand in the first.
std::string packed(const PullItem& item) {
  std::string out;
  for (size_t i = 0; i < item.packs.size(); ++i) {
    const Pack& pack = item.packs[i];
    const bool first = i == 0;
    out += csv_line({item.item, first ? written(item.need) : "", item.unit, item.use,
                     std::to_string(pack.count), written(pack.sold), pack.sold_unit,
                     written(pack.price), pack.shelf, first ? written(item.missing) : "",
                     first ? written(item.left_over) : ""});
  }
  return out;
}

}  // namespace

std::string pull_list_csv(const PlannedBuild& p) {
  const bool stocked = p.build.stock.has_value();
  std::vector<std::string> head{"item", "need", "unit"};
  if (stocked) {
    head.insert(head.end(),
                {"for", "packs", "pack", "pack_unit", "price", "shelf", "missing", "left_over"});
  }
  std::string out = csv_line(head);
  for (const PullItem& i : p.plan.pull_list) {
    if (stocked && !i.packs.empty()) {
      out += packed(i);
      continue;
    }
    std::vector<std::string> line{i.item, written(i.need), i.unit};
    if (stocked) line.insert(line.end(), {i.use, "", "", "", "", "", "", ""});
    out += csv_line(line);
  }
  return out;
}

}  // namespace loamsheet
