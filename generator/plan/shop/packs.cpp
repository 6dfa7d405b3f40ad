#include "plan/shop/packs.h"

#include <algorithm>
#include <cmath>
#include <limits>

#include "plan/choose/cheapest_cover.h"
#include "plan/fill/bulk_named.h"

namespace loamsheet {
namespace {

// The densest that a material of the layers may be, kg/m3.
std::optional<double> density_of(const Build& build, const std::string& material) {
  const Bulk* bulk = bulk_named(build.layers, material);
  return bulk ? std::optional(bulk->dry_density.high.v) : std::nullopt;
}

// What a pack holds in the unit of the need. Moss by the litre lies as deep as the spec has it.
// Goods by weight are turned into litres by their
// density, and the densest counts, so that there is never too little.
std::optional<double> size_for(const Build& build, const PullItem& item, const StockedPack& pack) {
  if (pack.unit == item.unit) return pack.size;
  if (pack.unit == "L" && item.use == "moss") return pack.size / build.layers.moss->depth.v;
  if (pack.unit != "kg" || item.unit != "L") return std::nullopt;
  const auto density = density_of(build, item.item);
  if (!density || *density <= 0) return std::nullopt;
  return pack.size * 1000 / *density;
}

// A line of the stock list that may serve an item.
struct Offer {
  size_t line = 0;
  double size = 0;
  std::optional<Money> price;
};

class Shelves {
 public:
  explicit Shelves(const Build& build) : build_(build) {
    for (const StockedPack& pack : *build.stock) left_.push_back(pack.on_hand);
  }

  void serve(PullItem& item) {
    const std::vector<Offer> offers = offers_for(item);
    if (offers.empty()) return;
    auto counts = cheapest_cover(item.need, kinds(offers, true));
    if (!counts) {
      item.missing = item.need - on_hand(offers);
      counts = cheapest_cover(item.need, kinds(offers, false));
    }
    for (size_t i = 0; i < offers.size(); ++i) take(offers[i], (*counts)[i], item);
    item.price = price_of(item.packs);
    item.left_over = std::max(0.0, held(item.packs) - item.need);
    std::stable_sort(item.packs.begin(), item.packs.end(),
                     [](const Pack& a, const Pack& b) { return a.size > b.size; });
  }

 private:
  std::vector<Offer> offers_for(const PullItem& item) const {
    std::vector<Offer> all, priced;
    for (size_t i = 0; i < build_.stock->size(); ++i) {
      const StockedPack& pack = (*build_.stock)[i];
      if (pack.item != item.item) continue;
      const auto size = size_for(build_, item, pack);
      if (size) all.push_back({i, *size, pack.price});
    }
    std::copy_if(all.begin(), all.end(), std::back_inserter(priced),
                 [](const Offer& offer) { return offer.price.has_value(); });
    return priced.empty() ? all : priced;
  }

  // Where no price is known, the size stands for it, so that little is left over.
  std::vector<PackKind> kinds(const std::vector<Offer>& offers, bool on_hand_only) const {
    std::vector<PackKind> all;
    for (const Offer& offer : offers) {
      const int available = on_hand_only ? left_[offer.line] : std::numeric_limits<int>::max();
      const Money by_size{std::llround(offer.size * 1e4)};
      all.push_back({offer.size, offer.price.value_or(by_size), available});
    }
    return all;
  }

  double on_hand(const std::vector<Offer>& offers) const {
    double sum = 0;
    for (const Offer& offer : offers) sum += left_[offer.line] * offer.size;
    return sum;
  }

  void take(const Offer& offer, int count, PullItem& item) {
    left_[offer.line] = std::max(0, left_[offer.line] - count);
    const StockedPack& pack = (*build_.stock)[offer.line];
    if (count == 0) return;
    item.packs.push_back({offer.size, count, pack.size, pack.unit, pack.price, pack.shelf});
  }

  static std::optional<Money> price_of(const std::vector<Pack>& packs) {
    Money sum;
    for (const Pack& pack : packs) {
      if (!pack.price) return std::nullopt;
      sum += *pack.price * pack.count;
    }
    return packs.empty() ? std::nullopt : std::optional(sum);
  }

  static double held(const std::vector<Pack>& packs) {
    double sum = 0;
    for (const Pack& pack : packs) sum += pack.size * pack.count;
    return sum;
  }

  const Build& build_;
  std::vector<int> left_;
};

}  // namespace

void choose_packs(const Build& build, std::vector<PullItem>& list) {
  if (!build.stock) return;
  Shelves shelves(build);
  for (PullItem& item : list) shelves.serve(item);
}

}  // namespace loamsheet
