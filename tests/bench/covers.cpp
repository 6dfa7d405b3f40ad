// Two hundred needs, each covered from four hundred sizes of packs, of which there are few: what
// the instruction count of tests/bench/run is taken of. Prints the sum of the prices.
#include <cstdint>
#include <cstdio>

#include "plan/choose/cheapest_cover.h"

using namespace loamsheet;

namespace {

// A fixed sequence of whole numbers from 0 to below `limit`.
class Numbers {
 public:
  int next(int limit) {
    state_ = state_ * 6364136223846793005ULL + 1442695040888963407ULL;
    return static_cast<int>((state_ >> 33) % static_cast<std::uint64_t>(limit));
  }

 private:
  std::uint64_t state_ = 20260307;
};

// From 0.1 to 100 litres, at 0.50 to 1.50 a litre.
PackKind drawn(Numbers& numbers) {
  const int tenths = 1 + numbers.next(1000);
  return {tenths * 0.1, Money{tenths * std::int64_t{500 + numbers.next(1000)}}, numbers.next(6)};
}

}  // namespace

int main() {
  Numbers numbers;
  Money sum;
  for (int item = 0; item < 200; ++item) {
    std::vector<PackKind> kinds;
    for (int size = 0; size < 400; ++size) kinds.push_back(drawn(numbers));
    const auto counts = cheapest_cover(20 + numbers.next(2000) * 0.1, kinds);
    for (size_t i = 0; counts && i < kinds.size(); ++i) sum += kinds[i].price * (*counts)[i];
  }
  std::printf("%s\n", decimal(sum, 2).c_str());
}
