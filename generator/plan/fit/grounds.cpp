#include "plan/fit/grounds.h"

#include <algorithm>

#include "base/text.h"

namespace loamsheet {

Weight held(Weight weight, const Origins& origins) {
  const bool unsure = std::any_of(origins.begin(), origins.end(),
                                  [](const Origin& origin) { return origin.from_memory(); });
  return weight == Weight::stop && unsure ? Weight::caution : weight;
}

std::optional<Weight> weight_of(Gravity gravity, const Origins& origins) {
  switch (gravity) {
    case Gravity::none:
      return std::nullopt;
    case Gravity::note:
      return Weight::note;
    case Gravity::caution:
      return Weight::caution;
    case Gravity::stop:
      break;
  }
  return held(Weight::stop, origins);
}

std::string sources_of(const Build& build, const Origins& origins) {
  std::vector<std::string> titles;
  for (const Origin& origin : origins) {
    const auto source = build.sources.find(origin.name);
    const std::string& title = source == build.sources.end() ? origin.name : source->second.title;
    if (std::find(titles.begin(), titles.end(), title) == titles.end()) titles.push_back(title);
  }
  return join(titles, "; ");
}

bool holds(const Known<bool>& fact) {
  return fact && fact->value;
}

}  // namespace loamsheet
