// The real world: files are written whole or not at all.
#include "world/world.h"

#include <catch2/catch.hpp>
#include <filesystem>

#include <unistd.h>

using namespace loamsheet;
namespace fs = std::filesystem;

namespace {

class Folder {
 public:
  Folder() {
    std::string name = (fs::temp_directory_path() / "loamsheet-world-XXXXXX").string();
    path = ::mkdtemp(name.data());
  }
  ~Folder() { fs::remove_all(path); }
  std::string operator/(const std::string& name) const { return (path / name).string(); }
  fs::path path;
};

}  // namespace

TEST_CASE("what is written is read back, and nothing is left beside it") {
  const Folder folder;
  auto world = real_world();
  REQUIRE(world->write(folder / "a.txt", "one"));
  REQUIRE(world->write(folder / "a.txt", std::string("two\0three", 9)));
  CHECK(world->read(folder / "a.txt") == std::string("two\0three", 9));
  CHECK(world->list(folder.path.string()) == std::vector<std::string>{"a.txt"});
}

TEST_CASE("a file that cannot be written leaves the old one and no half") {
  const Folder folder;
  auto world = real_world();
  CHECK_FALSE(world->write(folder / "no/such/a.txt", "one"));
  REQUIRE(world->make_folder(folder / "taken"));
  CHECK_FALSE(world->write(folder / "taken", "one"));
  CHECK(world->list(folder.path.string()).empty());
}

TEST_CASE("a folder is not a file, and what is absent gives nothing") {
  const Folder folder;
  auto world = real_world();
  CHECK_FALSE(world->read(folder.path.string()));
  CHECK_FALSE(world->read(folder / "absent"));
  CHECK(world->list(folder / "absent").empty());
  CHECK_FALSE(world->variable("LOAMSHEET_NO_SUCH_VARIABLE"));
}

TEST_CASE("the program's own data are found") {
  auto world = real_world();
  CHECK(world->read(world->data("templates/style.yaml")));
  CHECK(world->read(world->data("fonts/OpenSans-Regular.ttf")));
  CHECK(world->read(world->data("fonts/sRGB.icc")));
}
