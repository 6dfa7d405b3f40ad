#include <algorithm>
#include <cmath>
#include <numeric>
#include <tuple>

#include "plan/choose/cheapest_cover.h"

namespace loamsheet {
namespace {

constexpr double hair = 1e-9;  // share of a need: more than rounding, less than any grain

// Some packs of the kinds looked at so far; `last` is where its chain of takings ends.
struct Cover {
  Money cost;
  double amount = 0;
  int packs = 0;
  int last = -1;
};

// So many packs of one kind, after those of another taking.
struct Taking {
  int before = -1;
  size_t kind = 0;
  int count = 0;
};

bool comes_before(const Cover& a, const Cover& b) {
  return std::tuple(a.cost, -a.amount, a.packs) < std::tuple(b.cost, -b.amount, b.packs);
}

// Leaves out what can never become better than another: covers that hold no more than a cheaper
// one, and those that differ only in the number of packs.
void keep_undominated(std::vector<Cover>& all) {
  std::sort(all.begin(), all.end(), comes_before);
  double cheaper = -1, here = -1;  // the most that a cheaper one, or one of this price, holds
  size_t kept = 0;
  for (const Cover& next : all) {
    const Cover* before = kept > 0 ? &all[kept - 1] : nullptr;
    if (before && before->cost < next.cost) cheaper = here;
    const bool same = before && before->cost == next.cost && before->amount == next.amount;
    if (next.amount <= cheaper || same) continue;
    here = std::max(here, next.amount);
    all[kept++] = next;
  }
  all.resize(kept);
}

// Kinds are looked at from the cheapest litre on, all numbers of packs of each at once. A cover is
// given up when what it lacks, bought by the litre from the kinds still to come, would cost more
// than the best whole cover known.
class Search {
 public:
  Search(double need, const std::vector<PackKind>& kinds)
      : need_(need - hair * need), kinds_(kinds), order_(kinds.size()) {
    std::iota(order_.begin(), order_.end(), size_t{0});
    std::vector<double> by_litre;
    for (const PackKind& kind : kinds) {
      by_litre.push_back(static_cast<double>(kind.price.v) / kind.size);
    }
    std::stable_sort(order_.begin(), order_.end(), [&](size_t a, size_t b) {
      return std::tuple(by_litre[a], -kinds[a].size) < std::tuple(by_litre[b], -kinds[b].size);
    });
    for (size_t kind : order_) litre_costs_.push_back(by_litre[kind]);
  }

  std::optional<std::vector<int>> run() {
    if (need_ <= 0) return std::vector<int>(kinds_.size());
    for (size_t kind = 0; kind < kinds_.size(); ++kind) try_alone(kind);
    std::vector<Cover> open{{}}, next;
    for (size_t i = 0; i < order_.size() && !open.empty(); ++i) {
      next.clear();
      for (const Cover& cover : open) extend(cover, i, next);
      keep_undominated(next);
      open.swap(next);
    }
    if (!best_) return std::nullopt;
    return counts(*best_);
  }

 private:
  int wanted(double amount, const PackKind& kind) const {
    return static_cast<int>(std::ceil(std::max(0.0, need_ - amount) / kind.size));
  }

  void try_alone(size_t kind) {
    const int count = wanted(0, kinds_[kind]);
    if (count <= kinds_[kind].available) offer(with({}, kind, count), {-1, kind, count});
  }

  // From the most packs downwards, the least that a cover can end up costing only grows.
  void extend(const Cover& cover, size_t at, std::vector<Cover>& next) {
    const size_t kind = order_[at];
    const int most = std::min(wanted(cover.amount, kinds_[kind]), kinds_[kind].available);
    for (int n = most; n >= 0; --n) {
      Cover more = with(cover, kind, n);
      if (more.amount >= need_) {
        offer(more, {cover.last, kind, n});
      } else if (hopeless(more, at + 1)) {
        return;
      } else {
        if (n > 0) more.last = taken({cover.last, kind, n});
        next.push_back(more);
      }
    }
  }

  // Costs are whole, so half of one is more than any rounding and less than any difference.
  bool hopeless(const Cover& cover, size_t from) const {
    if (from == order_.size()) return true;
    const double least =
        static_cast<double>(cover.cost.v) + (need_ - cover.amount) * litre_costs_[from];
    return best_ && least > static_cast<double>(best_->cost.v) + 0.5;
  }

  Cover with(Cover cover, size_t kind, int n) const {
    cover.cost += kinds_[kind].price * n;
    cover.amount += n * kinds_[kind].size;
    cover.packs += n;
    return cover;
  }

  void offer(Cover cover, const Taking& taking) {
    const auto rank = [](const Cover& c) { return std::tuple(c.cost, c.amount, c.packs); };
    if (best_ && rank(cover) >= rank(*best_)) return;
    cover.last = taken(taking);
    best_ = cover;
  }

  int taken(const Taking& taking) {
    takings_.push_back(taking);
    return static_cast<int>(takings_.size()) - 1;
  }

  std::vector<int> counts(const Cover& cover) const {
    std::vector<int> all(kinds_.size());
    for (int at = cover.last; at >= 0; at = takings_[static_cast<size_t>(at)].before) {
      all[takings_[static_cast<size_t>(at)].kind] = takings_[static_cast<size_t>(at)].count;
    }
    return all;
  }

  double need_;
  const std::vector<PackKind>& kinds_;
  std::vector<size_t> order_;
  std::vector<double> litre_costs_;  // in that order
  std::vector<Taking> takings_;
  std::optional<Cover> best_;
};

}  // namespace

std::optional<std::vector<int>> cheapest_cover(double need, const std::vector<PackKind>& kinds) {
  return Search(need, kinds).run();
}

}  // namespace loamsheet
