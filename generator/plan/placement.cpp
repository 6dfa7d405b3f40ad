#include "plan/placement.h"

#include <algorithm>
#include <numeric>

#include "plan/placement_rules.h"

namespace loamsheet {
namespace {

using Choices = std::vector<Choice>;  // best first, then in order of sites

// A pass looks at every plant once; more passes than this bring nothing worth the time.
constexpr int most_passes = 12;

class Search {
 public:
  Search(const std::vector<ToPlace>& plants, const std::vector<Site>& sites)
      : plants_(plants), sites_(sites), chosen_(plants.size()) {
    fix();
    measure();
    for (size_t i = 0; i < plants.size(); ++i) choices_.push_back(choices_of(i));
  }

  void construct();
  void improve();
  Placement result() const;

 private:
  void fix();
  void measure();
  Choices choices_of(size_t plant) const;
  bool clashes(size_t a, int site, size_t b) const;
  std::optional<Choice> best_free(size_t plant, long above) const;
  std::vector<size_t> in_the_way(size_t plant, int site) const;
  long now(size_t plant) const { return chosen_[plant] ? chosen_[plant]->score : 0; }
  std::optional<Choice> choice_at(size_t plant, int site) const;
  bool move(size_t plant);
  bool push(size_t plant);
  bool push_from(size_t plant, const Choice& wanted, size_t other);
  bool swap(size_t a, size_t b);
  bool pass();
  bool swaps(size_t plant);
  std::optional<Choice> next_best(size_t plant) const;

  const std::vector<ToPlace>& plants_;
  const std::vector<Site>& sites_;
  std::vector<std::optional<Choice>> chosen_;
  std::vector<Choices> choices_;
  std::vector<double> kept_;
};

// The square of the distance that each two plants keep; asked for millions of times.
void Search::measure() {
  for (const ToPlace& a : plants_) {
    for (const ToPlace& b : plants_) {
      const double kept = distance_kept(a.needs, b.needs).v;
      kept_.push_back(kept * kept);
    }
  }
}

void Search::fix() {
  for (size_t i = 0; i < plants_.size(); ++i) {
    const auto& fixed = plants_[i].fixed;
    if (fixed) chosen_[i] = Choice{*fixed, score(plants_[i].needs, sites_[*fixed])};
  }
}

// Plants of one entry are alike, and follow each other.
bool alike(const ToPlace& a, const ToPlace& b) {
  return !a.fixed && !b.fixed && a.on == b.on && a.needs == b.needs;
}

// Every site that obeys the hard rules alone and beside what is fixed.
Choices Search::choices_of(size_t plant) const {
  const ToPlace& wanted = plants_[plant];
  if (wanted.fixed) return {*chosen_[plant]};
  if (plant > 0 && alike(wanted, plants_[plant - 1])) return choices_.back();
  Choices all;
  for (size_t s = 0; s < sites_.size(); ++s) {
    const Site& site = sites_[s];
    const bool there = wanted.on.empty() || wanted.on == site.on;
    if (!there || !fits(wanted.needs, site)) continue;
    const int at = static_cast<int>(s);
    if (in_the_way(plant, at).empty()) all.push_back({at, score(wanted.needs, site)});
  }
  std::stable_sort(all.begin(), all.end(),
                   [](const Choice& a, const Choice& b) { return a.score > b.score; });
  return all;
}

bool Search::clashes(size_t a, int site, size_t b) const {
  if (a == b || !chosen_[b]) return false;
  const Position &p = sites_[site].at, &q = sites_[chosen_[b]->site].at;
  const double x = p.x - q.x, y = p.y - q.y, z = p.z - q.z;
  return x * x + y * y + z * z < kept_[a * plants_.size() + b];
}

// The plants that would have to go; no more than two are told, for no move makes two give way.
std::vector<size_t> Search::in_the_way(size_t plant, int site) const {
  std::vector<size_t> found;
  for (size_t other = 0; other < plants_.size() && found.size() < 2; ++other) {
    if (clashes(plant, site, other)) found.push_back(other);
  }
  return found;
}

std::optional<Choice> Search::best_free(size_t plant, long above) const {
  for (const Choice& choice : choices_[plant]) {
    if (choice.score <= above) break;
    if (in_the_way(plant, choice.site).empty()) return choice;
  }
  return std::nullopt;
}

std::optional<Choice> Search::choice_at(size_t plant, int site) const {
  const Choices& all = choices_[plant];
  const auto found =
      std::find_if(all.begin(), all.end(), [&](const Choice& c) { return c.site == site; });
  return found == all.end() ? std::nullopt : std::optional(*found);
}

void Search::construct() {
  std::vector<size_t> order(plants_.size());
  std::iota(order.begin(), order.end(), 0);
  std::stable_sort(order.begin(), order.end(),
                   [&](size_t a, size_t b) { return choices_[a].size() < choices_[b].size(); });
  for (const size_t plant : order) {
    if (!chosen_[plant]) chosen_[plant] = best_free(plant, -1);
  }
}

bool Search::move(size_t plant) {
  const auto better = best_free(plant, chosen_[plant] ? now(plant) : -1);
  if (!better) return false;
  chosen_[plant] = better;
  return true;
}

// Takes a place whose only holder finds another, when both together gain; or loses it altogether,
// when the place is worth more than both had.
bool Search::push_from(size_t plant, const Choice& wanted, size_t other) {
  if (plants_[other].fixed) return false;
  const auto before = chosen_[plant], held = chosen_[other];
  const long least = now(plant) + now(other) - wanted.score;
  chosen_[plant] = wanted;
  const auto elsewhere = best_free(other, std::max(least, -1L));
  if (elsewhere || least < 0) {
    chosen_[other] = elsewhere;
    return true;
  }
  chosen_[plant] = before, chosen_[other] = held;
  return false;
}

bool Search::push(size_t plant) {
  constexpr size_t tries = 400;
  const Choices& all = choices_[plant];
  for (size_t i = 0; i < std::min(tries, all.size()) && all[i].score > now(plant); ++i) {
    const auto others = in_the_way(plant, all[i].site);
    if (others.size() == 1 && push_from(plant, all[i], others[0])) return true;
  }
  return false;
}

bool Search::swap(size_t a, size_t b) {
  if (!chosen_[a] || !chosen_[b] || plants_[b].fixed || alike(plants_[a], plants_[b])) return false;
  const auto at = chosen_[a], bt = chosen_[b];
  const auto new_a = choice_at(a, bt->site), new_b = choice_at(b, at->site);
  if (!new_a || !new_b || new_a->score + new_b->score <= at->score + bt->score) return false;
  chosen_[a] = new_a, chosen_[b] = new_b;
  if (in_the_way(a, new_a->site).empty() && in_the_way(b, new_b->site).empty()) return true;
  chosen_[a] = at, chosen_[b] = bt;
  return false;
}

bool Search::swaps(size_t plant) {
  bool better = false;
  for (size_t other = plant + 1; other < plants_.size(); ++other) better |= swap(plant, other);
  return better;
}

bool Search::pass() {
  bool better = false;
  for (size_t plant = 0; plant < plants_.size(); ++plant) {
    if (plants_[plant].fixed) continue;
    better |= move(plant) || push(plant);
    better |= swaps(plant);
  }
  return better;
}

void Search::improve() {
  for (int i = 0; i < most_passes && pass(); ++i) {
  }
}

std::optional<Choice> Search::next_best(size_t plant) const {
  if (!chosen_[plant] || plants_[plant].fixed) return std::nullopt;
  const Needs& needs = plants_[plant].needs;
  const Site& here = sites_[chosen_[plant]->site];
  for (const Choice& choice : choices_[plant]) {
    const bool elsewhere = !clash(needs, sites_[choice.site], needs, here);
    if (elsewhere && in_the_way(plant, choice.site).empty()) return choice;
  }
  return std::nullopt;
}

Placement Search::result() const {
  Placement placed;
  placed.chosen = chosen_;
  for (size_t i = 0; i < plants_.size(); ++i) {
    placed.next.push_back(next_best(i));
    placed.score += now(i);
    placed.bound += choices_[i].empty() ? 0 : choices_[i].front().score;
  }
  return placed;
}

}  // namespace

Placement place(const std::vector<ToPlace>& plants, const std::vector<Site>& sites) {
  Search search(plants, sites);
  search.construct();
  search.improve();
  return search.result();
}

}  // namespace loamsheet
