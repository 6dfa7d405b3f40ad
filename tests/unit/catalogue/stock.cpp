#include "catalogue/stock.h"

#include <catch2/catch.hpp>

#include "world/world.h"

using namespace loamsheet;

namespace {

const Span named_at{"spec.yaml", 7, 8, 9};
const std::string header = "item,pack,unit,price,on_hand,shelf\n";

Outcome<Stock> read(const std::string& text) {
  MemoryWorld world;
  world.files["stock.csv"] = text;
  return read_stock(world, "stock.csv", named_at);
}

// The one thing that is wrong with a list.
Diagnostic wrong(const std::string& text) {
  auto outcome = read(text);
  CHECK_FALSE(outcome.value);
  REQUIRE(outcome.messages.size() == 1);
  return outcome.messages.front();
}

void check_place(const Diagnostic& d, int line, int column) {
  CHECK(d.where.file == "stock.csv");
  CHECK(d.where.line == line);
  CHECK(d.where.column == column);
}

}  // namespace

TEST_CASE("a stock list is read, with its units turned into ours") {
  const auto stock = read(header + "orchid-bark,8,dry qt,\"6.50\",3,\"B 1, left\"\r\n" +
                          "sand,500,g,,0,\n\n" + "coir,1/2,m3,9,4,\"say \"\"dry\"\"\"");
  REQUIRE(stock.value);
  const auto& lines = stock.value->lines;
  REQUIRE(lines.size() == 3);
  CHECK(lines[0].unit == "L");
  CHECK(lines[0].pack == Approx(8.80976754172));
  CHECK(*lines[0].price == Money{65000});
  CHECK(lines[0].on_hand == 3);
  CHECK(lines[0].shelf == "B 1, left");
  CHECK(lines[1].unit == "kg");
  CHECK(lines[1].pack == Approx(0.5));
  CHECK_FALSE(lines[1].price);
  CHECK(lines[2].pack == Approx(500));
  CHECK(lines[2].shelf == "say \"dry\"");
  CHECK(lines[2].where == Span{"stock.csv", 5, 1, 4});
}

TEST_CASE("columns may stand in any order") {
  const auto stock = read("shelf,on_hand,price,unit,pack,item\nA1,2,3,L,10,coir\n");
  REQUIRE(stock.value);
  CHECK(stock.value->lines[0].item == "coir");
  CHECK(stock.value->lines[0].on_hand == 2);
}

TEST_CASE("a list that cannot be read is reported where the spec names it") {
  MemoryWorld world;
  const auto outcome = read_stock(world, "stock.csv", named_at);
  REQUIRE(outcome.messages.size() == 1);
  CHECK(outcome.messages[0].fault == Fault::file);
  CHECK(outcome.messages[0].where == named_at);
}

TEST_CASE("every slip in a list has its line and column") {
  check_place(wrong(header + "coir,10,L,x,4,A1\n"), 2, 11);
  check_place(wrong(header + "coir,0,L,1,4,A1\n"), 2, 6);
  check_place(wrong(header + "coir,10,L,-1,4,A1\n"), 2, 11);
  check_place(wrong(header + "coir,10,L,1,2.5,A1\n"), 2, 13);
  check_place(wrong(header + "coir,10,L,1.23456,2,A1\n"), 2, 11);
  check_place(wrong(header + "coir,10,L,1/3,2,A1\n"), 2, 11);
  check_place(wrong(header + "coir,10,L,1,4\n"), 2, 1);
  check_place(wrong(header + ",10,L,1,4,A1\n"), 2, 1);
  check_place(wrong(header + "\"coir,10,L,1,4,A1\n"), 2, 1);
  check_place(wrong(header + "\"coir\"s,10,L,1,4,A1\n"), 2, 7);
  check_place(wrong(header + "coir,10,L,1,4,A1\ncoir,10,L,2,4,A2\n"), 3, 1);
  check_place(wrong("\xff"), 0, 0);
  check_place(wrong(""), 0, 0);
}

TEST_CASE("a misspelt column or unit is told the nearest") {
  CHECK(wrong("item,pack,unit,price,on_hand,shelf,shlef\n").hint == "did you mean 'shelf'?");
  CHECK(wrong(header + "coir,10,picee,1,4,A1\n").hint == "did you mean 'piece'?");
  CHECK(wrong(header + "coir,10,qt,1,4,A1\n").expected == "dry qt or liq qt");
}

TEST_CASE("the example list can be read") {
  const auto world = real_world();
  const auto stock = read_stock(*world, world->data("specs/stock.csv"), named_at);
  REQUIRE(stock.value);
  CHECK(stock.value->lines.size() > 20);
}
