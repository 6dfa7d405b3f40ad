#include "plan/choose/best_choice.h"

#include <algorithm>
#include <memory>

namespace loamsheet {
namespace {

// A way to take so many plants, and the two parts that it is made of.
struct Way {
  Money cost;
  long worth = 0;
  int left_count = 0;
  size_t left = 0, right = 0;  // positions among the ways of the parts
};

// Of ways to take one number of plants those that none beats in cost and worth at once; by cost.
using Ways = std::vector<Way>;

// The ways for each number of plants out of a part of the offers: one offer, or two parts joined.
struct Bundle {
  std::vector<Ways> ways;
  int offer = -1;
  std::unique_ptr<Bundle> left, right;
};
using BundleOwner = std::unique_ptr<Bundle>;

long worth_of_some(long worth, int count) {
  if (worth < 0) return worth * count;
  long sum = 0;
  for (int i = 0; i < std::min(count, 40); ++i) sum += worth >> i;
  return sum;
}

long worth_of_role(const RoleWorth& role, int count) {
  return count == 0 ? 0 : role.filled - role.crowded * std::max(0, count - role.enough);
}

bool affordable(Money cost, const Wish& wish) {
  return !wish.budget || cost <= *wish.budget;
}

// Without a budget the best way alone is wanted.
void keep_best(Ways& ways, const Wish& wish) {
  std::stable_sort(ways.begin(), ways.end(), [](const Way& a, const Way& b) {
    return a.cost != b.cost ? a.cost < b.cost : a.worth > b.worth;
  });
  Ways kept;
  for (const Way& way : ways) {
    if (!kept.empty() && way.worth <= kept.back().worth) continue;
    if (!wish.budget) kept.clear();
    kept.push_back(way);
  }
  ways = std::move(kept);
}

struct Assortment {
  const std::vector<Pickable>& offers;
  const std::vector<RoleWorth>& roles;
  const Wish& wish;

  const RoleWorth& role(const Pickable& offer) const {
    return roles[static_cast<size_t>(offer.role)];
  }
};

BundleOwner nothing() {
  auto part = std::make_unique<Bundle>();
  part->ways = {{Way{}}};
  return part;
}

BundleOwner single(const Pickable& offer, int index, const Assortment& offered) {
  const Wish& wish = offered.wish;
  const long alike = offered.role(offer).alike;
  BundleOwner part = nothing();
  part->offer = index;
  const int most = std::min(wish.count, static_cast<int>(offer.price.size()));
  for (int n = 1; n <= most; ++n) {
    const Money cost = offer.price[static_cast<size_t>(n - 1)];
    if (!affordable(cost, wish)) break;
    part->ways.push_back({Way{cost, worth_of_some(offer.worth, n) - alike, n, 0, 0}});
  }
  return part;
}

struct Joint {
  const Ways &left, &right;
  int left_count;
};

void cross(const Joint& joint, const Wish& wish, Ways& into) {
  for (size_t i = 0; i < joint.left.size(); ++i) {
    for (size_t j = 0; j < joint.right.size(); ++j) {
      const Way &a = joint.left[i], &b = joint.right[j];
      if (!affordable(a.cost + b.cost, wish)) break;
      into.push_back({a.cost + b.cost, a.worth + b.worth, joint.left_count, i, j});
    }
  }
}

BundleOwner joined(BundleOwner left, BundleOwner right, const Wish& wish) {
  auto part = std::make_unique<Bundle>();
  const size_t most =
      std::min(static_cast<size_t>(wish.count), left->ways.size() + right->ways.size() - 2);
  part->ways.resize(most + 1);
  for (size_t k = 0; k <= most; ++k) {
    for (size_t a = 0; a <= std::min(k, left->ways.size() - 1); ++a) {
      if (k - a >= right->ways.size()) continue;
      cross({left->ways[a], right->ways[k - a], static_cast<int>(a)}, wish, part->ways[k]);
    }
    keep_best(part->ways[k], wish);
  }
  part->left = std::move(left), part->right = std::move(right);
  return part;
}

template <class Worth>
void add_worth(Bundle& part, Worth worth) {
  for (size_t k = 1; k < part.ways.size(); ++k) {
    for (Way& way : part.ways[k]) way.worth += worth(static_cast<int>(k));
  }
}

// The offers from `at` on that are alike in some way, joined; `at` is then behind them.
template <class Alike, class Next>
BundleOwner run(const std::vector<Pickable>& offers, size_t& at, const Wish& wish, Alike alike,
                Next next) {
  const size_t first = at;
  BundleOwner part = nothing();
  while (at < offers.size() && alike(offers[first], offers[at])) {
    part = joined(std::move(part), next(at), wish);
  }
  return part;
}

BundleOwner of_one_leaf(const Assortment& offered, size_t& at) {
  const auto alike = [](const Pickable& a, const Pickable& b) {
    return a.role == b.role && a.leaf == b.leaf;
  };
  const long first = offered.role(offered.offers[at]).alike;
  const auto one = [&](size_t& i) {
    BundleOwner part = single(offered.offers[i], static_cast<int>(i), offered);
    ++i;
    return part;
  };
  BundleOwner part = run(offered.offers, at, offered.wish, alike, one);
  add_worth(*part, [first](int) { return first; });  // the first species loses nothing
  return part;
}

void count_offers(const Bundle& part, size_t count, size_t way, std::vector<int>& taken) {
  if (part.offer >= 0) {
    taken[static_cast<size_t>(part.offer)] = static_cast<int>(count);
  } else if (part.left) {
    const Way& made = part.ways[count][way];
    const auto left = static_cast<size_t>(made.left_count);
    count_offers(*part.left, left, made.left, taken);
    count_offers(*part.right, count - left, made.right, taken);
  }
}

}  // namespace

std::vector<int> best_choice(const std::vector<Pickable>& offers,
                             const std::vector<RoleWorth>& roles, const Wish& wish) {
  const Assortment offered{offers, roles, wish};
  BundleOwner all = nothing();
  for (size_t at = 0; at < offers.size();) {
    const RoleWorth& role = offered.role(offers[at]);
    const auto alike = [](const Pickable& a, const Pickable& b) { return a.role == b.role; };
    BundleOwner part =
        run(offers, at, wish, alike, [&](size_t& i) { return of_one_leaf(offered, i); });
    add_worth(*part, [&](int count) { return worth_of_role(role, count); });
    all = joined(std::move(all), std::move(part), wish);
  }
  std::vector<int> taken(offers.size());
  size_t count = all->ways.size() - 1;
  while (all->ways[count].empty()) --count;
  count_offers(*all, count, all->ways[count].size() - 1, taken);
  return taken;
}

}  // namespace loamsheet
