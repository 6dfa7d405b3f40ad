// How figures are written for other programs.
#include "data/data.h"

#include <catch2/catch.hpp>

#include "data/json_sink.h"

using namespace loamsheet;

TEST_CASE("figures have six significant digits") {
  CHECK(figure(13.123456789).dump() == "13.1235");
  CHECK(figure(0.00012345678).dump() == "0.000123457");
  CHECK(figure(123456789.0).dump() == "123457000.0");
  CHECK(figure(-0.0).dump() == "0.0");
}

TEST_CASE("a figure with spread is a pair, without it a number, without a value null") {
  const Wording wording({}, UnitSystem::metric);
  JsonSink to(wording);
  to.add("spread", unit::ml, Range<Litres>{{1.5}, {2}});
  to.add("exact", unit::l, Range<Litres>{{1.5}, {1.5}});
  to.add("unknown", unit::l, std::optional<Litres>{});
  CHECK(to.json().dump() == R"({"spread_ml":[1500.0,2000.0],"exact_l":1.5,"unknown_l":null})");
}

TEST_CASE("money is written exactly, a sentence in words, a material by its name") {
  const Wording wording(
      {{"order.fill", "Fill in {a-material}."}, {"material.coir", "coconut fibre"}},
      UnitSystem::metric);
  JsonSink to(wording);
  to.open({"step"});
  to.add("price", Money{123456789});
  to.sentence({"words"}, "order.fill", {{"a-material", "coir"}});
  to.add("after", std::vector{1, 2});
  to.close();
  CHECK(to.json().dump() ==
        R"({"step":{"price":12345.6789,"words":"Fill in coconut fibre.","after":[1,2]}})");
}

TEST_CASE("a document is nested by two blanks, with an array of numbers on one line") {
  const Json j{{"band", {21.3, 24.8}}, {"why", {"damp"}}, {"none", Json::array()}, {"no", nullptr}};
  CHECK(document(j) ==
        "{\n  \"band\": [21.3, 24.8],\n  \"why\": [\n    \"damp\"\n  ],\n"
        "  \"none\": [],\n  \"no\": null\n}\n");
  const Json corners{{0.0, 90.5}, {45.0, 1e-7}};
  CHECK(document(corners) == "[\n  [0.0, 90.5],\n  [45.0, 1e-07]\n]\n");
}

TEST_CASE("a document says what was put in, however long or odd") {
  const Json j{
      {"a \"key\"", "é\n"}, {"long", std::vector<int>(60, 1234)}, {"empty", Json::object()}};
  CHECK(Json::parse(document(j)) == j);
  CHECK(document(j).find("\n    1234,\n") != std::string::npos);
}

TEST_CASE("the pull list is CSV after RFC 4180, a line for each size of pack") {
  Build build;
  build.stock.emplace();
  Plan plan;
  const Wording wording({}, UnitSystem::metric);
  plan.pull_list.push_back({"substrate", "with, comma", 1, "L", {}, {}});
  plan.pull_list.push_back({"litter", "with \"quote\"", 7.5, "L", {}, {}});
  plan.pull_list[1].packs = {{5, 1, 5, "L", Money{65000}, "A1"}, {2, 2, 2, "L", {}, ""}};
  plan.pull_list[1].left_over = 1.5;
  CHECK(pull_list_csv({build, plan, wording}) ==
        "item,need,unit,for,packs,pack,pack_unit,price,shelf,missing,left_over\r\n"
        "\"with, comma\",1,L,substrate,,,,,,,\r\n"
        "\"with \"\"quote\"\"\",7.5,L,litter,1,5,L,6.50,A1,0,1.5\r\n"
        "\"with \"\"quote\"\"\",,L,litter,2,2,L,,,,\r\n");
  build.stock.reset();
  CHECK(pull_list_csv({build, plan, wording}) ==
        "item,need,unit\r\n\"with, comma\",1,L\r\n\"with \"\"quote\"\"\",7.5,L\r\n");
}

TEST_CASE("what does not apply is null and what is not built is absent") {
  Build build;
  Plan plan;
  const Wording wording({}, UnitSystem::metric);
  const auto numbers = Json::parse(numbers_json({build, plan, wording}));
  CHECK(numbers["layers"]["drainage"].is_null());
  CHECK(numbers["mass"]["stand_margin_kg"].is_null());
  CHECK_FALSE(numbers.contains("air"));
  CHECK(numbers["plants"].empty());
  CHECK(numbers["placement"].is_null());
}
