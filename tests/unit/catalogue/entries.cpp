// What the catalogue holds: the entries that are promised.
#include <catch2/catch.hpp>
#include <fstream>

#include "catalogue/catalogue.h"
#include "world/world.h"

using namespace loamsheet;

TEST_CASE("every id of the reference tables is there") {
  const auto world = real_world();
  const auto c = read_catalogue(*world);
  REQUIRE(c.value);
  std::ifstream list(LOAMSHEET_SOURCE "/tests/unit/catalogue/reference-ids.txt");
  std::string section, id;
  int read = 0;
  for (; list >> section >> id; ++read) {
    INFO(section << ' ' << id);
    const bool there = section == "plants"    ? c.value->plants.has(id)
                       : section == "animals" ? c.value->animals.has(id)
                       : section == "crew"    ? c.value->crew.has(id)
                                              : c.value->materials.has(id);
    CHECK(there);
  }
  CHECK(read == 208);
}
