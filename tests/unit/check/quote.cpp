#include "check/quote.h"

#include "example.h"

using namespace loamsheet;

namespace {

std::vector<Diagnostic> said(const std::string& quote) {
  MemoryWorld world;
  world.files["spec.yaml"] = example_spec + "quote: " + quote + "\n";
  const auto spec = read_spec(world, "spec.yaml", "");
  REQUIRE(spec.value);
  return check(*spec.value, real_catalogue()).messages;
}

QuoteTerms terms(const std::string& quote) {
  return *built(example_spec + "quote: " + quote + "\n").quote;
}

}  // namespace

TEST_CASE("a quote's amounts are taken from what was typed") {
  const QuoteTerms t = terms(
      "{currency: EUR, tax: 8.875 %, labour: 210 min, rate: 32.50 per h, delivery: 24.99, "
      "deposit: 1/3, valid: 14 d, dated: 2026-02-20}");
  CHECK(t.digits == 2);
  CHECK(t.tax.top == 71);
  CHECK(t.tax.bottom == 800);
  CHECK(t.hours.top == 7);
  CHECK(t.hours.bottom == 2);
  CHECK(t.rate == Money{325000});
  CHECK(*t.delivery == Money{249900});
  CHECK(t.deposit.bottom == 3);
  CHECK(t.valid_days == 14);
  CHECK(iso(*t.dated) == "2026-02-20");
}

TEST_CASE("coins are those of ISO 4217") {
  CHECK(terms("{currency: JPY, tax: 10 %}").digits == 0);
  CHECK(terms("{currency: KWD, tax: 0 %}").digits == 3);
  CHECK(terms("{currency: CLF, tax: 0 %}").digits == 4);
  const auto slip = said("{currency: EUO, tax: 0 %}");
  REQUIRE(slip.size() == 1);
  CHECK(slip[0].message == "unknown currency of ISO 4217 'EUO'");
  CHECK(said("{currency: XAU, tax: 0 %}").size() == 1);
}

TEST_CASE("labour without a rate, and amounts finer than any coin, are errors") {
  CHECK(said("{currency: EUR, tax: 0 %, labour: 2 h}").at(0).message ==
        "labour is charged, but what an hour costs is missing");
  CHECK(said("{currency: EUR, tax: 0 %, delivery: 1.00001}").at(0).message ==
        "'1.00001' cannot be reckoned with exactly");
}

TEST_CASE("an amendment has its rate by volume or by area") {
  const std::string feed = example_spec + "amendments:\n  - {material: organic-starter-feed, ";
  const Build by_volume = built(feed + "label_rate: 15 g per 4 L, strength: 1/2}\n");
  REQUIRE(by_volume.amendments.size() == 1);
  CHECK(by_volume.amendments[0].rate == Approx(3.75));
  CHECK(by_volume.amendments[0].strength.v == 0.5);
  CHECK(by_volume.amendments[0].density->v == Approx(750));
  const Build by_area = built(feed + "area_rate: 50 g/m2}\n");
  CHECK(by_area.amendments[0].by_area);
  CHECK(by_area.amendments[0].rate == Approx(50));
}
