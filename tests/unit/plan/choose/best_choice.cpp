#include "plan/choose/best_choice.h"

#include <catch2/catch.hpp>
#include <map>
#include <random>

using namespace loamsheet;

namespace {

struct Drawn {
  std::vector<Pickable> offers;
  std::vector<RoleWorth> roles;
  Wish wish;
};

Drawn drawn(std::uint32_t seed) {
  std::mt19937 numbers(seed);
  const auto draw = [&](int low, int high) {
    return low + static_cast<int>(numbers() % static_cast<std::uint32_t>(high - low + 1));
  };
  Drawn all;
  all.roles = {{1'000'000, 300'000, 1, 100'000},
               {900'000, 200'000, 2, 150'000},
               {0, 0, 5, draw(0, 1) * 100'000L}};
  for (int role = 0; role < 3; ++role) {
    for (int leaf = 0; leaf < draw(1, 2); ++leaf) {
      for (int i = draw(1, 2); i > 0; --i) {
        Pickable offer{role, leaf, draw(300'000, 999'999) - (role == 2 ? 3'000'000 : 0), {}};
        Money price;
        for (int n = draw(0, 3); n > 0; --n) {
          offer.price.push_back(price += Money{draw(1, 9) * 50});
        }
        all.offers.push_back(offer);
      }
    }
  }
  all.wish.count = draw(1, 5);
  if (draw(0, 2) > 0) all.wish.budget = Money{draw(2, 30) * 50};
  return all;
}

// The worth of one offer and its repeats, by the rule alone: each is worth half of the one before.
long worth_of_offer(const Pickable& offer, int count) {
  long sum = 0, each = offer.worth;
  for (int i = 0; i < count; ++i, each = offer.worth < 0 ? each : each / 2) sum += each;
  return sum;
}

// The worth of a set, added up by the rules alone.
long worth_of(const std::vector<int>& taken, const Drawn& all) {
  long sum = 0;
  for (size_t r = 0; r < all.roles.size(); ++r) {
    const RoleWorth& role = all.roles[r];
    int count = 0;
    std::map<int, int> leaves;
    for (size_t i = 0; i < taken.size(); ++i) {
      if (taken[i] == 0 || all.offers[i].role != static_cast<int>(r)) continue;
      sum += worth_of_offer(all.offers[i], taken[i]);
      count += taken[i];
      if (++leaves[all.offers[i].leaf] > 1) sum -= role.alike;
    }
    if (count > 0) sum += role.filled;
    if (count > role.enough) sum -= role.crowded * (count - role.enough);
  }
  return sum;
}

struct Best {
  int count = 0;
  long worth = 0;
};

// Tries every set.
void try_all(const Drawn& all, size_t at, std::vector<int>& taken, Money cost, Best& best) {
  if (all.wish.budget && cost > *all.wish.budget) return;
  if (at == all.offers.size()) {
    int count = 0;
    for (const int n : taken) count += n;
    if (count > all.wish.count || count < best.count) return;
    const long worth = worth_of(taken, all);
    if (count > best.count || worth > best.worth) best = {count, worth};
    return;
  }
  for (size_t n = 0; n <= all.offers[at].price.size(); ++n) {
    taken[at] = static_cast<int>(n);
    try_all(all, at + 1, taken, cost + (n == 0 ? Money{} : all.offers[at].price[n - 1]), best);
  }
  taken[at] = 0;
}

Money cost_of(const Drawn& all, const std::vector<int>& taken) {
  Money cost;
  for (size_t i = 0; i < taken.size(); ++i) {
    if (taken[i] > 0) cost += all.offers[i].price[static_cast<size_t>(taken[i] - 1)];
  }
  return cost;
}

}  // namespace

TEST_CASE("the best choice is that of trying every set, and keeps to budget and shelf") {
  for (std::uint32_t seed = 1; seed <= 300; ++seed) {
    INFO("drawn from " << seed);
    const Drawn all = drawn(seed);
    Best best;
    std::vector<int> none(all.offers.size());
    try_all(all, 0, none, {}, best);
    const std::vector<int> taken = best_choice(all.offers, all.roles, all.wish);
    int count = 0;
    for (size_t i = 0; i < taken.size(); ++i) {
      count += taken[i];
      REQUIRE(static_cast<size_t>(taken[i]) <= all.offers[i].price.size());
    }
    CHECK(count == best.count);
    CHECK((count == 0 || worth_of(taken, all) == best.worth));
    if (all.wish.budget) CHECK(cost_of(all, taken) <= *all.wish.budget);
  }
}

TEST_CASE("a role to fill is worth more than a second plant that fits better") {
  const std::vector<Pickable> offers{{0, 0, 990'000, {Money{}, Money{}}},
                                     {1, 1, 400'000, {Money{}}}};
  const std::vector<RoleWorth> roles{{1'000'000, 300'000, 1}, {1'000'000, 300'000, 1}};
  CHECK(best_choice(offers, roles, {2, std::nullopt}) == std::vector<int>{1, 1});
}
