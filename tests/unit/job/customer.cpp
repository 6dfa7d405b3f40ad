// The customer's copy of a spec: the shop's blocks and comments are cut out, the rest stays.
#include "job/customer.h"

#include <catch2/catch.hpp>

#include "base/world.h"
#include "world/world.h"

using namespace loamsheet;

namespace {

// A world in memory that still finds the program's own data.
class SpecWorld : public MemoryWorld {
 public:
  std::optional<std::string> read(const std::string& path) override {
    auto own = MemoryWorld::read(path);
    return own ? own : real_->read(path);
  }
  std::string data(const std::string& name) override { return real_->data(name); }

 private:
  std::unique_ptr<World> real_ = real_world();
};

Spec spec_of(const std::string& text) {
  SpecWorld world;
  world.files["spec.yaml"] = text;
  auto spec = read_spec(world, "spec.yaml", "");
  REQUIRE(spec);
  return *spec.value;
}

const std::string head =
    "use: [tank-60x45x45, humid-sloped]   # our stock tank\n"
    "build: {title: 'Number # one', reference: TT-0170, revision: A, plant_on: 2026-05-02}\n";

}  // namespace

TEST_CASE("the stock list and the comments are cut out, and the copy says so") {
  const auto cut = customer_spec(spec_of("# margin 40 %\n" + head +
                                         "stock: stock.csv\nquote:\n"
                                         "  currency: EUR  # ask Ida\n  tax: 20 %\n"),
                                 "Cut.");
  REQUIRE(cut);
  CHECK(*cut.value ==
        "# Cut.\n"
        "use: [tank-60x45x45, humid-sloped]\n"
        "build: {title: 'Number # one', reference: TT-0170, revision: A, plant_on: 2026-05-02}\n"
        "quote:\n"
        "  currency: EUR\n"
        "  tax: 20 %\n");
}

TEST_CASE("what is cut can be read again and says the same") {
  const std::string text = head + "stock: stock.csv\nshop: {name: Tarn & Thicket}\n";
  const auto cut = customer_spec(spec_of(text), "Cut.");
  REQUIRE(cut);
  const Spec again = spec_of(*cut.value);
  CHECK(again.root.text("shop.name") == "Tarn & Thicket");
  CHECK(again.root.text("build.title") == "Number # one");
  CHECK_FALSE(again.root.has("stock"));
}

TEST_CASE("a spec that cannot be cut by lines is refused with the remedy") {
  const auto cut = customer_spec(
      spec_of("{use: [tank-60x45x45, humid-sloped], build: {title: One, reference: TT-0170, "
              "plant_on: 2026-05-02}}\n"),
      "Cut.");
  REQUIRE_FALSE(cut);
  CHECK(cut.messages.front().hint == "write each top-level key on a line of its own");
}

TEST_CASE("a customer sees sums, not packs, prices of packs or what the shelf lacks") {
  Build build;
  build.stock.emplace();
  Plan plan;
  PullItem bark{"substrate", "orchid-bark", 9, "L", {{5, 2, 5, "L", Money{55000}, "B1"}}, {}};
  bark.price = Money{110000}, bark.missing = 1, bark.left_over = 1;
  plan.pull_list = {bark};
  plan.quote.emplace();
  plan.quote->lines = {
      {QuoteGroup::materials, "orchid-bark", 2, 5, "L", {}, Money{55000}, Money{110000}}};
  plan.findings = {{Weight::caution, "stock-short", {}, {}}, {Weight::note, "crew-thin", {}, {}}};
  const Shown shop(build, plan, false), customer(build, plan, true);
  CHECK(&shop.plan() == &plan);
  CHECK_FALSE(customer.build().stock);
  const Plan& seen = customer.plan();
  CHECK(seen.pull_list[0].need == 9);
  CHECK(seen.pull_list[0].packs.empty());
  CHECK_FALSE(seen.pull_list[0].price);
  CHECK(seen.pull_list[0].missing == 0);
  REQUIRE(seen.quote->lines.size() == 1);
  CHECK_FALSE(seen.quote->lines[0].each);
  CHECK(*seen.quote->lines[0].amount == Money{110000});
  REQUIRE(seen.findings.size() == 1);
  CHECK(seen.findings[0].rule == "crew-thin");
}
