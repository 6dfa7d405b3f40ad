#include <array>

#include "example.h"

using namespace loamsheet;

namespace {

Build dated(const std::string& more) {
  return built(example_spec + more);
}

}  // namespace

TEST_CASE("shop.closed says on which weekdays nobody works") {
  const Build build = dated("shop: {name: A shop, closed: [sunday, monday]}\n");
  CHECK(build.shop.closed == std::array{true, false, false, false, false, false, true});
  CHECK(dated("").shop.closed == std::array<bool, 7>{});
}

TEST_CASE("calendar.days says how far the calendar runs") {
  CHECK(dated("calendar: {days: 80}\n").calendar_days == 80);
  CHECK_FALSE(dated("").calendar_days);
}

TEST_CASE("the build carries the rules of work and care") {
  CHECK(dated("").rules.work.size() == real_catalogue().rules.get().value->work.size());
  CHECK(dated("").rules.care.size() > 30);
}

TEST_CASE("a move more than a year after planting is an error") {
  MemoryWorld world;
  world.files["spec.yaml"] =
      with(example_spec, "plant_on: 2026-03-07", "plant_on: 2026-03-07, moves_on: 2027-03-09");
  const auto spec = read_spec(world, "spec.yaml", "");
  REQUIRE(spec.value);
  const auto outcome = check(*spec.value, real_catalogue());
  REQUIRE(outcome.messages.size() == 1);
  CHECK(outcome.messages[0].message ==
        "the move (2027-03-09) is more than a year after planting (2026-03-07)");
}
