#include "check/stock.h"

#include "example.h"

using namespace loamsheet;

namespace {

Outcome<Build> with_stock(const std::string& item) {
  MemoryWorld world;
  world.files["spec.yaml"] = example_spec + "stock: stock.csv\n";
  const auto spec = read_spec(world, "spec.yaml", "");
  const Stock stock{"stock.csv", {{item, "L", 10, Money{50000}, 3, "A1", {"stock.csv", 2, 1, 4}}}};
  return check(*spec.value, real_catalogue(), stock);
}

}  // namespace

TEST_CASE("the stock list goes into the build") {
  const auto build = with_stock("coir");
  REQUIRE(build.value);
  CHECK(build.messages.empty());
  REQUIRE(build.value->stock);
  CHECK(build.value->stock->front().on_hand == 3);
  CHECK_FALSE(built(example_spec).stock);
}

TEST_CASE("an item that looks like a slip is spoken of, others are the shop's own") {
  const auto slip = with_stock("coirr");
  REQUIRE(slip.messages.size() == 1);
  CHECK(slip.messages[0].severity == Severity::warning);
  CHECK(slip.messages[0].hint == "did you mean 'coir'?");
  CHECK(with_stock("feeding-tongs").messages.empty());
}

TEST_CASE("a measured loss is litres a day, the stand has its height") {
  const Build build = built(example_spec + "measured: {water_lost: 100-120 mL per day}\n");
  REQUIRE(build.measured_loss);
  CHECK(build.measured_loss->low.v == Approx(0.1));
  CHECK(build.measured_loss->high.v == Approx(0.12));
  const Build raised = built(with(example_spec, "height: 45 cm",
                                  "height: 45 cm\n  stand: {rated_load: 100 kg, height: 70 cm}"));
  CHECK(raised.enclosure.stand_height == 700_mm);
}
