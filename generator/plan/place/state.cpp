#include "plan/place/state.h"

namespace loamsheet {
namespace {

constexpr double far_away = 1e9;

}  // namespace

PlacementState::PlacementState(const PlacementTask& task)
    : task_(task), at_(task.count()), crowns_(task.count()) {
  feet_.x.assign(task.count(), far_away);
  feet_.y = feet_.z = feet_.x;
}

void PlacementState::put(size_t plant, const std::optional<SiteWorth>& spot) {
  at_[plant] = spot;
  const Position at = spot ? task_.site(spot->site).at : Position{far_away, far_away, far_away};
  feet_.x[plant] = at.x, feet_.y[plant] = at.y, feet_.z[plant] = at.z;
  if (spot) crowns_[plant] = task_.crown(plant, spot->site);
}

bool PlacementState::near(size_t other, const Position& p, double square) const {
  const double x = p.x - feet_.x[other];
  if (x * x >= square) return false;
  const double y = p.y - feet_.y[other], z = p.z - feet_.z[other];
  return x * x + y * y + z * z < square;
}

std::vector<size_t> PlacementState::in_the_way(size_t plant, int site) const {
  std::vector<size_t> found;
  const Position& at = task_.site(site).at;
  const double* kept = task_.kept_squares(plant);
  for (size_t other = 0; other < at_.size() && found.size() < 2; ++other) {
    if (other != plant && near(other, at, kept[other])) found.push_back(other);
  }
  return found;
}

bool PlacementState::is_free(size_t plant, int site) const {
  const Position& at = task_.site(site).at;
  const double* kept = task_.kept_squares(plant);
  for (size_t other = 0; other < at_.size(); ++other) {
    if (near(other, at, kept[other]) && other != plant) return false;
  }
  return true;
}

long PlacementState::gain(size_t plant, const SiteWorth& spot) const {
  if (!task_.lamp()) return spot.worth;
  long sum = spot.worth;
  const Shaded here{plant, spot.site, task_.crown(plant, spot.site)};
  for (const size_t other : task_.movable()) {
    if (other == plant || !at_[other]) continue;
    const Shaded there{other, at_[other]->site, crowns_[other]};
    if (may_shade(there.crown, here.crown)) sum -= task_.loss(here, there.crown);
    if (may_shade(here.crown, there.crown)) sum -= task_.loss(there, here.crown);
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

}  // namespace loamsheet
