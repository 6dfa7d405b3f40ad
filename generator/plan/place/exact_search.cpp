#include "plan/place/exact_search.h"

#include <algorithm>

namespace loamsheet {
namespace {

// A site that a plant may take beside those that stay, and what it adds there.
struct FreeSite {
  SiteWorth spot;
  long gain = 0;
  Crown crown;
};

// Branch and bound: plant by plant, best sites first; a branch ends where even the best free sites
// of the plants that are left would not reach the best placement known.
class Branching {
 public:
  Branching(const PlacementTask& task, PlacementState& state, const std::vector<size_t>& plants,
            const Effort& effort)
      : task_(task), state_(state), plants_(plants), steps_(effort.steps), now_(plants.size()) {
    for (const size_t plant : plants_) before_.push_back(state.at(plant));
    clear();
    for (size_t i = 0; i < plants_.size(); ++i) {
      if (before_[i]) best_ += state.gain(plants_[i], *before_[i]);
      state.put(plants_[i], before_[i]);
    }
    clear();
    for (const size_t plant : plants_) sites_.push_back(free_sites(plant, effort.sites));
  }

  bool search() {
    descend(0, 0);
    for (size_t i = 0; i < plants_.size(); ++i) state_.put(plants_[i], before_[i]);
    return better_;
  }

 private:
  void clear() {
    for (const size_t plant : plants_) state_.put(plant, std::nullopt);
  }

  std::vector<FreeSite> free_sites(size_t plant, size_t most) const {
    std::vector<FreeSite> sites;
    for (const SiteWorth& spot : task_.spots(plant)) {
      if (sites.size() >= most) break;
      if (state_.is_free(plant, spot.site))
        sites.push_back({spot, state_.gain(plant, spot), task_.crown(plant, spot.site)});
    }
    std::stable_sort(sites.begin(), sites.end(),
                     [](const FreeSite& a, const FreeSite& b) { return a.gain > b.gain; });
    return sites;
  }

  // What a plant adds at a site beside those placed before it; nothing when it clashes.
  std::optional<long> added(size_t i, const FreeSite& site, size_t placed) const {
    long sum = site.gain;
    for (size_t j = 0; j < placed; ++j) {
      if (!now_[j]) continue;
      const FreeSite& other = sites_[j][*now_[j]];
      if (task_.clash(plants_[i], site.spot.site, plants_[j], other.spot.site)) return std::nullopt;
      sum -= task_.cost({plants_[i], site.spot.site, site.crown},
                        {plants_[j], other.spot.site, other.crown});
    }
    return sum;
  }

  // The most that a plant still to come can add.
  long most(size_t i, size_t placed) const {
    long best = 0;
    for (const FreeSite& site : sites_[i]) {
      if (site.gain <= best) break;
      best = std::max(best, added(i, site, placed).value_or(0));
    }
    return best;
  }

  bool hopeless(size_t placed, long sum) const {
    for (size_t i = placed; i < plants_.size(); ++i) sum += most(i, placed);
    return sum <= best_;
  }

  // Of plants that are alike the later takes the later site: their swap is the same placement.
  size_t first_site(size_t i) const {
    if (i == 0 || !task_.alike(plants_[i - 1], plants_[i])) return 0;
    return now_[i - 1] ? *now_[i - 1] + 1 : sites_[i].size();
  }

  void keep(long sum) {
    best_ = sum, better_ = true;
    for (size_t i = 0; i < plants_.size(); ++i) {
      before_[i] = now_[i] ? std::optional(sites_[i][*now_[i]].spot) : std::nullopt;
    }
  }

  void descend(size_t i, long sum) {
    if (--steps_ < 0) return;
    if (i == plants_.size()) {
      if (sum > best_) keep(sum);
      return;
    }
    if (hopeless(i, sum)) return;
    for (size_t s = first_site(i); s < sites_[i].size(); ++s) {
      const auto here = added(i, sites_[i][s], i);
      if (!here) continue;
      now_[i] = s;
      descend(i + 1, sum + *here);
    }
    now_[i].reset();
    descend(i + 1, sum);
  }

  const PlacementTask& task_;
  PlacementState& state_;
  const std::vector<size_t>& plants_;
  long steps_, best_ = 0;
  bool better_ = false;
  std::vector<std::vector<FreeSite>> sites_;
  std::vector<std::optional<size_t>> now_;        // positions in sites_
  std::vector<std::optional<SiteWorth>> before_;  // the best known
};

}  // namespace

bool place_best(const PlacementTask& task, PlacementState& state, const std::vector<size_t>& plants,
                const Effort& effort) {
  return Branching(task, state, plants, effort).search();
}

}  // namespace loamsheet
