// An amount that the program prints in typed form reads back as the same value, whatever its kind;
// and a range read with its ends the wrong way round is mended by the fix it proposes.
#include <rapidcheck.h>

#include <catch2/catch.hpp>

#include "base/text.h"
#include "read/quantity.h"
#include "read/unit.h"

using namespace loamsheet;

namespace {

Kind any_kind() {
  const int first = static_cast<int>(Kind::length), last = static_cast<int>(Kind::hourly);
  return static_cast<Kind>(*rc::gen::inRange(first, last + 1));
}

// Twelve digits at most, between a millionth and ten million, as typed values are.
double any_amount() {
  const auto digits = *rc::gen::inRange<long long>(1, 1'000'000'000'000LL);
  const int places = *rc::gen::inRange(5, 12);
  double v = static_cast<double>(digits);
  for (int i = 0; i < places; ++i) v /= 10;
  return rounded(v, 12);
}

}  // namespace

TEST_CASE("a printed amount reads back as itself") {
  CHECK(rc::check([] {
    const Key key{.path = "x", .kind = any_kind()};
    const double v = any_amount();
    const Reading r = read_quantity(key, quantity_text(key.kind, v));
    RC_ASSERT(r.ok());
    RC_ASSERT(std::get<double>(r.value) == v);
  }));
}

TEST_CASE("the fix of a swapped range reads as the range in order") {
  CHECK(rc::check([] {
    const Key key{.path = "x", .kind = Kind::temperature, .flags = flag::range_ok};
    const double low = rounded(any_amount(), 6), high = low + *rc::gen::inRange(1, 50);
    const Reading swapped =
        read_range(key, quantity_text(key.kind, high), quantity_text(key.kind, low));
    RC_ASSERT(!swapped.ok());
    const Reading mended = read_quantity(key, swapped.fix);
    RC_ASSERT(mended.ok());
    const auto range = std::get<Range<double>>(mended.value);
    RC_ASSERT(range.low < range.high);
  }));
}
