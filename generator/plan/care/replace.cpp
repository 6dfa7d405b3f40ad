#include "plan/care/care.h"

#include <set>

namespace loamsheet {

void put_replacements(Build& build) {
  for (const Replacement& replaced : build.replaced) {
    const auto at = static_cast<size_t>(replaced.plant - 1);
    if (at >= build.plants.size()) continue;  // a finding says so
    PlantUse& use = build.plants[at];
    if (!use.before) use.before = PlantKind{use.facts, use.ppfd};
    use.facts = replaced.by.facts, use.ppfd = replaced.by.ppfd;
    use.replaced_on = replaced.on;
    use.where = replaced.where;
  }
}

std::vector<int> replacement_days(const Build& build) {
  std::set<int> days;
  for (const Replacement& replaced : build.replaced) {
    days.insert(days_between(build.identity.plant_on, replaced.on));
  }
  return {days.begin(), days.end()};
}

}  // namespace loamsheet
