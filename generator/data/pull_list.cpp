#include "base/text.h"
#include "data/csv.h"
#include "data/data.h"
#include "data/json.h"

namespace loamsheet {

std::string pull_list_csv(const PlannedBuild& p) {
  std::string out = csv_line({"item", "need", "unit"});
  for (const auto& i : p.plan.pull_list) {
    out += csv_line({i.item, significant(i.need, digits_written), i.unit});
  }
  return out;
}

}  // namespace loamsheet
