#include "plan/placement_state.h"

namespace loamsheet {

PlacementState::PlacementState(const PlacementTask& task) : task_(task), at_(task.count()) {}

std::vector<size_t> PlacementState::in_the_way(size_t plant, int site) const {
  std::vector<size_t> found;
  for (const size_t other : task_.movable()) {
    if (other == plant || !at_[other]) continue;
    if (task_.clash(plant, site, other, at_[other]->site)) found.push_back(other);
    if (found.size() == 2) break;
  }
  return found;
}

bool PlacementState::is_free(size_t plant, int site) const {
  for (const size_t other : task_.movable()) {
    if (other == plant || !at_[other]) continue;
    if (task_.clash(plant, site, other, at_[other]->site)) return false;
  }
  return true;
}

long PlacementState::gain(size_t plant, const SiteWorth& spot) const {
  long sum = spot.worth;
  for (const size_t other : task_.movable()) {
    if (other != plant && at_[other]) sum -= task_.cost(plant, spot.site, other, at_[other]->site);
  }
  return sum;
}

std::optional<SiteWorth> PlacementState::best_free(size_t plant, long above) const {
  std::optional<SiteWorth> best;
  for (const SiteWorth& spot : task_.spots(plant)) {
    if (spot.worth <= above) break;
    if (!is_free(plant, spot.site)) continue;
    if (const long here = gain(plant, spot); here > above) above = here, best = spot;
  }
  return best;
}

long PlacementState::total() const {
  long twice = 0;  // each pair's cost is in two gains, so worths are added once more
  for (const size_t plant : task_.movable()) {
    if (at_[plant]) twice += at_[plant]->worth + gain(plant);
  }
  return twice / 2;
}

}  // namespace loamsheet
