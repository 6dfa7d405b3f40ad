#include <cmath>

#include "check/build.h"
#include "plan/shop/shop.h"

namespace loamsheet {
namespace {

Arg amount(double v, const std::string& unit) {
  if (unit == "L") return Litres{v};
  if (unit == "kg") return Kilograms{v};
  if (unit == "m2") return SquareMetres{v};
  return static_cast<int>(std::ceil(v));
}

// Plants and crew go by their names.
std::string called(const Build& build, const PullItem& item) {
  for (const PlantUse& plant : build.plants) {
    if (item.use == "plants" && plant.facts.id == item.item) return plant.facts.name;
  }
  for (const CrewUse& crew : build.crew) {
    if (item.use == "crew" && crew.facts.id == item.item) return crew.facts.name;
  }
  return item.item;
}

}  // namespace

Found stock_findings(const Build& build, const Shopped& plan) {
  Found found;
  if (!build.stock) return found;
  const auto add = [&](Weight weight, const char* rule, const PullItem& item, double v) {
    found.push_back({weight,
                     rule,
                     build.stock_at,
                     {{"material", called(build, item)}, {"amount", amount(v, item.unit)}}});
  };
  for (const PullItem& item : plan.pull_list) {
    if (item.packs.empty() && may_be_there(item)) continue;
    if (item.packs.empty() && item.need > 0) {
      add(Weight::note, "stock-not-listed", item, item.need);
      continue;
    }
    if (item.missing > 0) add(Weight::caution, "stock-short", item, item.missing);
    if (!item.price) add(Weight::note, "price-missing", item, item.need);
  }
  return found;
}

}  // namespace loamsheet
