// Which bands go on which page: heights in points, on pages of 100.
#include "layout/paginate.h"

#include <catch2/catch.hpp>

using namespace loamsheet;

namespace {

Band band(double height, Keep keep = Keep::free, double space = 0) {
  Band b;
  b.height = height;
  b.keep = keep;
  b.space = space;
  return b;
}

// The first band of each page.
std::vector<size_t> starts(const Flow& flow) {
  Sink sink;
  std::vector<size_t> found;
  for (const Slice& s : paginate(flow, 100, sink)) found.push_back(s.from);
  CHECK(sink.messages().empty());
  return found;
}

using Starts = std::vector<size_t>;

}  // namespace

TEST_CASE("a page takes what fits, and drops the space above its first band") {
  Flow flow;
  flow.bands = {band(50), band(45, Keep::free, 5), band(95, Keep::free, 20)};
  CHECK(starts(flow) == Starts{0, 2});
}

TEST_CASE("a heading goes with what follows it") {
  Flow flow;
  flow.bands = {band(80), band(15), band(10, Keep::must), band(10, Keep::strong)};
  CHECK(starts(flow) == Starts{0, 1});
}

TEST_CASE("a wish is granted for a little blank, not for half a page") {
  Flow flow;
  flow.bands = {band(80), band(15), band(10, Keep::wish)};
  CHECK(starts(flow) == Starts{0, 1});
  flow.bands = {band(40), band(50), band(20, Keep::wish)};
  CHECK(starts(flow) == Starts{0, 2});
}

TEST_CASE("a table's head takes its room on every further page") {
  Flow flow;
  flow.heads = {band(30)};
  flow.bands = {band(30)};
  for (int i = 0; i < 6; ++i) flow.bands.push_back(band(30));
  for (size_t i = 1; i < flow.bands.size(); ++i) flow.bands[i].head = 0;
  CHECK(starts(flow) == Starts{0, 3, 5});
}

TEST_CASE("a band higher than a page is an error, and the rest is still looked at") {
  Flow flow;
  flow.bands = {band(10), band(120), band(10), band(130)};
  Sink sink;
  CHECK(paginate(flow, 100, sink).size() == 4);
  REQUIRE(sink.messages().size() == 2);
  CHECK(sink.messages()[0].message == "a block is higher than a page");
  CHECK(sink.messages()[0].fault == Fault::internal);
}
