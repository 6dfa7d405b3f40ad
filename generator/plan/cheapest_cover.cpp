#include <algorithm>
#include <cmath>
#include <numeric>
#include <tuple>

#include "plan/packs.h"

namespace loamsheet {
namespace {

constexpr double hair = 1e-9;  // share of a need: more than rounding, less than any grain

// Prices add up exactly in ten-thousandths.
using Money = long long;

// Some packs of the kinds looked at so far.
struct Cover {
  Money cost = 0;
  double amount = 0;
  int packs = 0;
  std::vector<int> counts;
};

bool comes_before(const Cover& a, const Cover& b) {
  return std::tuple(a.cost, -a.amount, a.packs) < std::tuple(b.cost, -b.amount, b.packs);
}

// Leaves out what can never become better than another: covers that hold no more than a cheaper
// one, and those that differ only in the number of packs.
std::vector<Cover> undominated(std::vector<Cover> all) {
  std::sort(all.begin(), all.end(), comes_before);
  std::vector<Cover> kept;
  double cheaper = -1, here = -1;  // the most that a cheaper one, or one of this price, holds
  for (Cover& next : all) {
    if (!kept.empty() && kept.back().cost < next.cost) cheaper = here;
    const bool same =
        !kept.empty() && kept.back().cost == next.cost && kept.back().amount == next.amount;
    if (next.amount <= cheaper || same) continue;
    here = std::max(here, next.amount);
    kept.push_back(std::move(next));
  }
  return kept;
}

class Search {
 public:
  Search(double need, const std::vector<PackKind>& kinds)
      : need_(need - hair * need), kinds_(kinds), order_(kinds.size()) {
    std::iota(order_.begin(), order_.end(), size_t{0});
    std::stable_sort(order_.begin(), order_.end(),
                     [&](size_t a, size_t b) { return kinds[a].size > kinds[b].size; });
  }

  // The largest packs first: of the smallest, the number follows from what is left.
  std::optional<std::vector<int>> run() {
    std::vector<Cover> open{{0, 0, 0, std::vector<int>(kinds_.size())}};
    for (size_t i = 0; i < order_.size(); ++i) {
      std::vector<Cover> next;
      for (const Cover& cover : open) extend(cover, order_[i], i + 1 == order_.size(), next);
      open = undominated(std::move(next));
    }
    if (!best_) return std::nullopt;
    return best_->counts;
  }

 private:
  void extend(const Cover& cover, size_t kind, bool last, std::vector<Cover>& next) {
    const int wanted =
        static_cast<int>(std::ceil(std::max(0.0, need_ - cover.amount) / kinds_[kind].size));
    const int most = std::min(wanted, kinds_[kind].available);
    for (int n = last ? most : 0; n <= most; ++n) take(with(cover, kind, n), next);
  }

  Cover with(Cover cover, size_t kind, int n) const {
    cover.cost += n * std::llround(kinds_[kind].price * 1e4);
    cover.amount += n * kinds_[kind].size;
    cover.packs += n;
    cover.counts[kind] = n;
    return cover;
  }

  void take(Cover cover, std::vector<Cover>& next) {
    if (cover.amount < need_) return next.push_back(std::move(cover));
    const auto rank = [](const Cover& c) { return std::tuple(c.cost, c.amount, c.packs); };
    if (!best_ || rank(cover) < rank(*best_)) best_ = std::move(cover);
  }

  double need_;
  const std::vector<PackKind>& kinds_;
  std::vector<size_t> order_;
  std::optional<Cover> best_;
};

}  // namespace

std::optional<std::vector<int>> cheapest_cover(double need, const std::vector<PackKind>& kinds) {
  return Search(need, kinds).run();
}

}  // namespace loamsheet
