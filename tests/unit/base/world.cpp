#include "base/world.h"

#include <catch2/catch.hpp>

using namespace loamsheet;

TEST_CASE("a world in memory lists the files of one folder only") {
  MemoryWorld world;
  CHECK(world.write("specs/b.yaml", "b"));
  CHECK(world.write("specs/a.yaml", "a"));
  CHECK(world.write("specs/profiles/c.yaml", "c"));
  CHECK(world.list("specs") == std::vector<std::string>{"a.yaml", "b.yaml"});
  CHECK(world.read("specs/a.yaml") == "a");
  CHECK_FALSE(world.read("specs/d.yaml"));
}
