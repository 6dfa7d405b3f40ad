// A value told field by field, and what the stable text makes of it.
#include <catch2/catch.hpp>

#include "base/text_sink.h"

namespace loamsheet {
namespace {

struct Pot {
  std::string id;
  Litres holds;
};

struct Shelf {
  std::string name;
  Range<Litres> room;
  std::optional<Money> price;
  std::vector<Pot> pots;
  std::optional<Pot> spare;
};

}  // namespace

void fields(const Pot& pot, FieldSink& to) {
  to.add("id", pot.id);
  to.add("holds", unit::ml, pot.holds);
}

void fields(const Shelf& shelf, FieldSink& to) {
  to.add("name", shelf.name);
  to.add("room", unit::l, shelf.room);
  to.add("price", shelf.price);
  to.list("pots", shelf.pots);
  to.object("spare", shelf.spare);
}

namespace {

std::string told(const Shelf& shelf) {
  TextSink to;
  to.object("shelf", shelf);
  return to.text();
}

}  // namespace

TEST_CASE("a field's key is its name and its unit") {
  CHECK(FieldName{"volume", "l"}.key() == "volume_l");
  CHECK(FieldName{"count"}.key() == "count");
  CHECK(FieldName{"", "mm"}.key().empty());
}

TEST_CASE("a text has an object's plain fields in its line and its objects below") {
  CHECK(told({"by the door",
              {{2}, {2.5}},
              Money{125000},
              {{"a", {0.25}}, {"b", {1}}},
              Pot{"c", {3}}}) ==
        R"(shelf name "by the door" room_l 2 2.5 price 12.50
  pots id a holds_ml 250
  pots id b holds_ml 1000
  spare id c holds_ml 3000
)");
}

TEST_CASE("a range with equal ends is one number, and what is not there leaves no trace") {
  CHECK(told({"low", {{2}, {2}}, std::nullopt, {}, std::nullopt}) == "shelf name low room_l 2\n");
}

TEST_CASE("sentences are written by their names, and the same numbers once") {
  TextSink to;
  const Args args{
      {"depth", Millimetres{20}}, {"room", Range<Litres>{{1}, {2}}}, {"what", "two words"}};
  to.open({"step"});
  to.sentence({"amount"}, "a.b", args);
  to.sentence({"words"}, "c.d", args);
  to.open_list({"why"});
  to.sentence({}, "e", args);
  to.close();
  to.close();
  to.add("status", "cleared");
  CHECK(to.text() == R"(step amount a.b depth=20 room=1..2 what="two words" words c.d
  why e depth=20 room=1..2 what="two words"
status cleared
)");
}

}  // namespace loamsheet
