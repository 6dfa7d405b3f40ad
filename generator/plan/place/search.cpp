#include "plan/place/search.h"

#include <algorithm>
#include <cmath>
#include <numeric>

#include "plan/place/bound.h"
#include "plan/place/exact_search.h"
#include "plan/place/state.h"

namespace loamsheet {
namespace {

// A pass looks at every plant once; more passes than this bring nothing worth the time.
constexpr int most_passes = 12;

// Small cases are searched as a whole; of larger ones a few neighbours at a time.
constexpr size_t small_case = 400;
constexpr Effort whole{small_case, 60'000}, neighbours{32, 400};
constexpr size_t neighbourhood = 4;

class Search {
 public:
  explicit Search(const PlacementTask& task) : task_(task), state_(task) {}

  void construct();
  void improve();
  void refine();
  Placement result() const;

 private:
  bool move(size_t plant);
  bool push(size_t plant);
  bool push_from(size_t plant, const SiteWorth& wanted, size_t other);
  bool swap(size_t a, size_t b);
  bool drop(size_t plant);
  bool pass();
  bool swaps(size_t plant);
  long joint_gain(size_t a, size_t b) const;
  std::optional<SiteWorth> spot_at(size_t plant, int site) const;
  std::vector<size_t> around(size_t plant) const;
  Choice choice(size_t plant, const SiteWorth& spot) const;
  std::optional<Choice> next_best(size_t plant) const;
  std::optional<int> site_of(size_t plant) const;

  const PlacementTask& task_;
  PlacementState state_;
};

std::optional<SiteWorth> Search::spot_at(size_t plant, int site) const {
  const SiteWorths& all = task_.spots(plant);
  const auto found =
      std::find_if(all.begin(), all.end(), [&](const SiteWorth& s) { return s.site == site; });
  return found == all.end() ? std::nullopt : std::optional(*found);
}

void Search::construct() {
  std::vector<size_t> order = task_.movable();
  std::stable_sort(order.begin(), order.end(), [&](size_t a, size_t b) {
    return task_.spots(a).size() < task_.spots(b).size();
  });
  for (const size_t plant : order) state_.put(plant, state_.best_free(plant, -1));
}

bool Search::move(size_t plant) {
  const long now = state_.at(plant) ? state_.gain(plant) : -1;
  const auto better = state_.best_free(plant, now);
  if (better) state_.put(plant, better);
  return better.has_value();
}

// What two plants add together.
long Search::joint_gain(size_t a, size_t b) const {
  long sum = state_.gain(a) + state_.gain(b);
  if (state_.at(a) && state_.at(b)) {
    sum += task_.cost(a, state_.at(a)->site, b, state_.at(b)->site);
  }
  return sum;
}

// Takes a place whose only holder finds another, when both together gain; or loses it altogether,
// when the place is worth more than both had.
bool Search::push_from(size_t plant, const SiteWorth& wanted, size_t other) {
  const auto before = state_.at(plant), held = state_.at(other);
  const long had = joint_gain(plant, other);
  state_.put(other, std::nullopt);
  state_.put(plant, wanted);
  const long least = had - state_.gain(plant);
  const auto elsewhere = state_.best_free(other, std::max(least, -1L));
  if (elsewhere || least < 0) {
    state_.put(other, elsewhere);
    return true;
  }
  state_.put(plant, before), state_.put(other, held);
  return false;
}

bool Search::push(size_t plant) {
  constexpr size_t tries = 60;
  const SiteWorths& all = task_.spots(plant);
  for (size_t i = 0; i < std::min(tries, all.size()); ++i) {
    if (state_.at(plant) && all[i].worth <= state_.gain(plant)) break;
    const auto others = state_.in_the_way(plant, all[i].site);
    if (others.size() == 1 && push_from(plant, all[i], others[0])) return true;
  }
  return false;
}

bool Search::swap(size_t a, size_t b) {
  if (!state_.at(a) || !state_.at(b) || task_.alike(a, b)) return false;
  const auto at = state_.at(a), bt = state_.at(b);
  const auto new_a = spot_at(a, bt->site), new_b = spot_at(b, at->site);
  if (!new_a || !new_b) return false;
  const long had = joint_gain(a, b);
  state_.put(a, new_a), state_.put(b, new_b);
  const bool free = state_.is_free(a, new_a->site) && state_.is_free(b, new_b->site);
  if (free && joint_gain(a, b) > had) return true;
  state_.put(a, at), state_.put(b, bt);
  return false;
}

bool Search::swaps(size_t plant) {
  bool better = false;
  for (const size_t other : task_.movable()) {
    if (other > plant) better |= swap(plant, other);
  }
  return better;
}

// A plant that costs the others more in shade than it is worth.
bool Search::drop(size_t plant) {
  if (state_.gain(plant) >= 0) return false;
  state_.put(plant, std::nullopt);
  return true;
}

bool Search::pass() {
  bool better = false;
  for (const size_t plant : task_.movable()) {
    better |= move(plant) || push(plant) || drop(plant);
    better |= swaps(plant);
  }
  return better;
}

void Search::improve() {
  for (int i = 0; i < most_passes && pass(); ++i) {
  }
}

// A plant and those nearest to where it stands, or would stand best.
std::vector<size_t> Search::around(size_t plant) const {
  if (task_.spots(plant).empty()) return {};
  const Position& here = task_.site(state_.at(plant).value_or(task_.spots(plant)[0]).site).at;
  const auto away = [&](size_t other) {
    const Position& there = task_.site(state_.at(other)->site).at;
    return std::hypot(here.x - there.x, here.y - there.y, here.z - there.z);
  };
  std::vector<size_t> near;
  for (const size_t other : task_.movable()) {
    if (other != plant && state_.at(other)) near.push_back(other);
  }
  const size_t most = std::min(neighbourhood - 1, near.size());
  std::stable_sort(near.begin(), near.end(), [&](size_t a, size_t b) { return away(a) < away(b); });
  near.resize(most);
  near.push_back(plant);
  std::sort(near.begin(), near.end());  // so that plants that are alike follow each other
  return near;
}

void Search::refine() {
  size_t spots = 0;
  for (const size_t plant : task_.movable()) spots += task_.spots(plant).size();
  if (spots <= small_case) {
    place_best(task_, state_, task_.movable(), whole);
    return;
  }
  for (const size_t plant : task_.movable()) place_best(task_, state_, around(plant), neighbours);
  improve();
}

std::optional<int> Search::site_of(size_t plant) const {
  if (task_.plant(plant).fixed) return task_.plant(plant).fixed;
  return state_.at(plant) ? std::optional(state_.at(plant)->site) : std::nullopt;
}

Choice Search::choice(size_t plant, const SiteWorth& spot) const {
  Choice choice{spot.site, task_.solo(plant, spot.site), 1.0};
  for (size_t other = 0; other < task_.count(); ++other) {
    const auto site = other == plant ? std::nullopt : site_of(other);
    if (!site) continue;
    choice.score -= task_.loss(plant, spot.site, other, *site);
    choice.light_left *= task_.left(plant, spot.site, other, *site);
  }
  choice.score = std::max(choice.score, 0L);  // a pinned plant may stand in any shade
  return choice;
}

std::optional<Choice> Search::next_best(size_t plant) const {
  if (!state_.at(plant)) return std::nullopt;
  const int here = state_.at(plant)->site;
  std::optional<Choice> best;
  for (const SiteWorth& spot : task_.spots(plant)) {
    if (best && spot.worth <= best->score) break;
    const bool elsewhere = !task_.clash(plant, spot.site, plant, here);
    if (!elsewhere || !state_.is_free(plant, spot.site)) continue;
    const Choice found = choice(plant, spot);
    if (!best || found.score > best->score) best = found;
  }
  return best;
}

Placement Search::result() const {
  Placement placed;
  for (size_t i = 0; i < task_.count(); ++i) {
    const auto site = site_of(i);
    placed.chosen.push_back(site ? std::optional(choice(i, {*site, 0})) : std::nullopt);
    placed.next.push_back(next_best(i));
    placed.score += site ? placed.chosen[i]->score : 0;
  }
  placed.bound = placement_bound(task_);
  return placed;
}

}  // namespace

Placement place(const std::vector<ToPlace>& plants, const std::vector<Site>& sites,
                const std::optional<Position>& lamp) {
  const PlacementTask task(plants, sites, lamp);
  Search search(task);
  search.construct();
  search.improve();
  search.refine();
  return search.result();
}

}  // namespace loamsheet
