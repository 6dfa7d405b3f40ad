#include "plan/shop/packs.h"

#include <catch2/catch.hpp>
#include <cmath>
#include <tuple>

#include "builds.h"
#include "plan/choose/cheapest_cover.h"

using namespace loamsheet;
using namespace loamsheet::tests;

namespace {

using Counts = std::vector<int>;
using Rank = std::tuple<long long, double, int>;

Rank rank_of(const std::vector<PackKind>& kinds, const Counts& counts) {
  Rank rank{};
  for (size_t i = 0; i < kinds.size(); ++i) {
    std::get<0>(rank) += counts[i] * kinds[i].price.v;
    std::get<1>(rank) += counts[i] * kinds[i].size;
    std::get<2>(rank) += counts[i];
  }
  return rank;
}

// Every way to take packs, one kind after another.
void try_all(double need, const std::vector<PackKind>& kinds, Counts counts,
             std::optional<Rank>& best) {
  if (counts.size() == kinds.size()) {
    const Rank rank = rank_of(kinds, counts);
    if (std::get<1>(rank) >= need && (!best || rank < *best)) best = rank;
    return;
  }
  const PackKind& kind = kinds[counts.size()];
  for (int n = 0; n <= kind.available && (n - 1) * kind.size < need; ++n) {
    Counts more = counts;
    more.push_back(n);
    try_all(need, kinds, more, best);
  }
}

// A fixed sequence of whole numbers from 0 to below `limit`.
class Numbers {
 public:
  int next(int limit) {
    state_ = state_ * 6364136223846793005ULL + 1442695040888963407ULL;
    return static_cast<int>((state_ >> 33) % static_cast<unsigned long long>(limit));
  }

 private:
  unsigned long long state_ = 20260307;
};

std::vector<PackKind> drawn_kinds(Numbers& numbers) {
  std::vector<PackKind> kinds;
  for (int i = 1 + numbers.next(3); i > 0; --i) {
    kinds.push_back(
        {(1 + numbers.next(40)) * 0.5, Money{numbers.next(24) * 2500}, numbers.next(9)});
  }
  return kinds;
}

PullItem wanted(double need, const std::string& unit = "L") {
  return {"substrate", "orchid-bark", need, unit, {}, {}};
}

Build stocked(std::vector<StockedPack> packs) {
  Build build = box_build();
  build.stock = std::move(packs);
  return build;
}

Money euros(double v) {
  return {std::llround(v * 1e4)};
}

StockedPack bark(double size, std::optional<double> price, int on_hand) {
  const auto amount = price ? std::optional(euros(*price)) : std::nullopt;
  return {"orchid-bark", "L", size, amount, on_hand, "", {}};
}

PullItem served(const Build& build, PullItem item) {
  std::vector<PullItem> list{std::move(item)};
  choose_packs(build, list);
  return list.front();
}

}  // namespace

TEST_CASE("the cover is the best of all there are") {
  Numbers numbers;
  int covered = 0;
  for (int i = 0; i < 600; ++i) {
    const auto kinds = drawn_kinds(numbers);
    const double need = 1 + numbers.next(60);
    std::optional<Rank> best;
    try_all(need, kinds, {}, best);
    const auto counts = cheapest_cover(need, kinds);
    INFO("need " << need << ", round " << i);
    REQUIRE(counts.has_value() == best.has_value());
    if (best) CHECK(rank_of(kinds, *counts) == *best);
    covered += best.has_value();
  }
  CHECK(covered > 200);
}

TEST_CASE("two cheap sacks beat a dear large one, and at one price the least is left over") {
  const Money four = euros(4), eight = euros(8), nine = euros(9);
  CHECK(cheapest_cover(18, {{20, nine, 5}, {10, four, 5}}) == Counts{0, 2});
  CHECK(cheapest_cover(18, {{20, eight, 5}, {25, eight, 5}}) == Counts{1, 0});
  CHECK(cheapest_cover(20, {{10, four, 5}, {20, eight, 5}}) == Counts{0, 1});
  CHECK_FALSE(cheapest_cover(18, {{5, four, 3}}));
}

TEST_CASE("a need is covered from the shelf, and its packs have a price") {
  const PullItem item = served(stocked({bark(20, 9.5, 4), bark(5, 3, 2)}), wanted(23));
  REQUIRE(item.packs.size() == 2);
  CHECK(item.packs[0].size == 20);
  CHECK(item.packs[0].count == 1);
  CHECK(item.packs[1].count == 1);
  CHECK(*item.price == euros(12.5));
  CHECK(item.left_over == Approx(2));
  CHECK(item.missing == 0);
}

TEST_CASE("what is on hand comes before what is cheap, and a shortfall is counted") {
  const PullItem shelf = served(stocked({bark(20, 1, 0), bark(5, 3, 5)}), wanted(23));
  CHECK(shelf.packs[0].size == 5);
  CHECK(shelf.missing == 0);
  const PullItem beyond = served(stocked({bark(20, 1, 0), bark(5, 3, 2)}), wanted(23));
  CHECK(beyond.missing == Approx(13));
  CHECK(beyond.packs[0].size == 20);
  CHECK(beyond.packs[0].count == 2);
}

TEST_CASE("a pack without a price is taken only where none has one") {
  CHECK(served(stocked({bark(25, {}, 4), bark(20, 9.5, 4)}), wanted(23)).packs[0].size == 20);
  const PullItem unpriced = served(stocked({bark(50, {}, 4), bark(25, {}, 4)}), wanted(23));
  CHECK(unpriced.packs[0].size == 25);
  CHECK_FALSE(unpriced.price);
}

TEST_CASE("goods by weight serve a need in litres by their density") {
  StockedPack sack = bark(4, 6, 9);
  sack.unit = "kg";
  CHECK(served(stocked({sack}), wanted(23)).packs[0].size == Approx(20));  // 200 kg/m3
  CHECK(served(stocked({sack}), wanted(0.5, "m2")).packs.empty());
}

TEST_CASE("two needs of one item share what is on hand") {
  const Build build = stocked({bark(10, 5, 3)});
  std::vector<PullItem> list{wanted(20), wanted(20)};
  choose_packs(build, list);
  CHECK(list[0].missing == 0);
  CHECK(list[1].missing == Approx(10));
}

TEST_CASE("without a stock list there are no packs") {
  CHECK(served(box_build(), wanted(20)).packs.empty());
}
