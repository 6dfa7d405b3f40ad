// Every file of tests/cases/broken is a spec with mistakes; NAME.txt holds the whole text that the
// user sees. Where all problems propose an edit, the edited spec must read.
#include <algorithm>
#include <catch2/catch.hpp>
#include <filesystem>

#include "base/text.h"
#include "read_helpers.h"

using namespace loamsheet;

namespace {

std::vector<std::string> names() {
  std::vector<std::string> out;
  for (const auto& entry : std::filesystem::directory_iterator(source_path("tests/cases/broken"))) {
    if (entry.path().extension() == ".yaml") out.push_back(entry.path().stem().string());
  }
  std::sort(out.begin(), out.end());
  return out;
}

std::string path_of(const std::string& name, const std::string& ending) {
  return source_path("tests/cases/broken/" + name + ending);
}

struct Case {
  std::string name, file, text;
  MemoryWorld world = world_with_profiles();
  explicit Case(const std::string& n)
      : name(n), file(n + ".yaml"), text(file_text(path_of(n, ".yaml"))) {
    world.files[file] = text;
  }
};

}  // namespace

TEST_CASE("every broken spec is told what is wrong with it") {
  const auto all = names();
  CHECK(all.size() >= 70);
  for (const auto& name : all) {
    Case c(name);
    const auto read = read_spec(c.world, c.file, "");
    INFO(name);
    CHECK_FALSE(read);
    CHECK(rendered(c.world, read.messages) == file_text(path_of(name, ".txt")));
  }
}

TEST_CASE("a proposed edit mends what it is proposed for") {
  for (const auto& name : names()) {
    Case c(name);
    const auto before = read_spec(c.world, c.file, "").messages;
    const auto edits = static_cast<size_t>(std::count_if(
        before.begin(), before.end(), [](const Diagnostic& d) { return d.edit.has_value(); }));
    if (edits == 0) continue;
    c.world.files[c.file] = edited(c.text, before);
    const auto after = read_spec(c.world, c.file, "");
    INFO(name << '\n' << c.world.files[c.file] << rendered(c.world, after.messages));
    CHECK(after.messages.size() <= before.size() - edits);
  }
}

TEST_CASE("rewrite the expected texts of the broken specs", "[.][rewrite]") {
  for (const auto& name : names()) {
    Case c(name);
    const auto read = read_spec(c.world, c.file, "");
    write_file(path_of(name, ".txt"), rendered(c.world, read.messages));
  }
}
