// The table of keys: its rows agree with themselves and with the files made from them.
#include <catch2/catch.hpp>
#include <regex>
#include <set>

#include "base/text.h"
#include "read/key.h"
#include "read/leaf.h"
#include "read/pattern.h"
#include "read_helpers.h"

using namespace loamsheet;

namespace {

bool is_leaf(const Key& key) {
  return key.kind != Kind::group && key.kind != Kind::list && key.kind != Kind::table;
}

std::string parent_of(std::string_view path) {
  const size_t end = path.ends_with(']') ? path.find_last_of('[') : path.find_last_of('.');
  return end == std::string_view::npos ? "" : std::string(path.substr(0, end));
}

// A document of one key, for the examples of groups and lists.
std::string one_key(const Key& key) {
  return "x: " + std::string(key.example) + '\n';
}

// The rows of a key and below it, moved to the top under the name x.
std::vector<Key> rows_below(const Key& key, std::vector<std::string>& paths) {
  std::vector<Key> rows;
  paths.reserve(spec_keys().size());
  for (Key row : spec_keys()) {
    if (!row.path.starts_with(key.path)) continue;
    const std::string_view rest = row.path.substr(key.path.size());
    if (!rest.empty() && rest[0] != '.' && rest[0] != '[') continue;
    paths.push_back("x" + std::string(rest));
    row.path = paths.back();
    rows.push_back(row);
  }
  return rows;
}

}  // namespace

TEST_CASE("every row has its parent, its help and an example, and stands once") {
  std::set<std::string_view> seen;
  for (const Key& key : spec_keys()) {
    INFO(key.path);
    CHECK(seen.insert(key.path).second);
    const std::string parent = parent_of(key.path);
    CHECK((parent.empty() || find_key(spec_keys(), parent)));
    CHECK(key.help.ends_with('.'));
    CHECK_FALSE(key.example.empty());
    CHECK(key.limits.low <= key.limits.high);
    CHECK((key.kind == Kind::choice) == !key.choices.empty());
    CHECK(key.has(flag::unknown_ok) == !key.unknown.empty());
  }
}

TEST_CASE("the example and the default of every value can be read") {
  for (const Key& key : spec_keys()) {
    if (!is_leaf(key)) continue;
    INFO(key.path);
    CHECK(read_leaf(key, std::string(key.example), false).message.empty());
    const bool words = key.fallback.empty() || key.kind == Kind::text;
    CHECK((words || read_leaf(key, std::string(key.fallback), false).ok()));
    const bool amount = has_unit(key.kind) && !key.unknown.empty();
    CHECK((!amount || read_leaf(key, std::string(key.unknown), false).ok()));
  }
}

TEST_CASE("the example of every group and list can be read") {
  for (const Key& key : spec_keys()) {
    if (is_leaf(key) || key.has(flag::short_form)) continue;
    std::vector<std::string> paths;
    std::vector<Key> rows = rows_below(key, paths);
    for (Key& row : rows) row.flags &= ~static_cast<unsigned>(flag::required);
    INFO(key.path);
    MemoryWorld world;
    const auto read = read_document(one_key(key), "example", rows);
    CHECK(rendered(world, read.messages).empty());
  }
}

TEST_CASE("the schema's patterns take what the reader takes") {
  for (const Key& key : spec_keys()) {
    const bool patterned = is_leaf(key) && key.kind != Kind::text && key.kind != Kind::choice &&
                           key.kind != Kind::yes_no;
    if (!patterned) continue;
    INFO(key.path << ' ' << pattern_of(key));
    const std::regex pattern(pattern_of(key));
    CHECK(std::regex_match(std::string(key.example), pattern));
    CHECK(std::regex_match("?", pattern) == key.has(flag::unknown_ok));
    CHECK_FALSE(std::regex_match(std::string("1 parsec!"), pattern));
  }
}

TEST_CASE("the schema and the key reference in specs are those of the table") {
  CHECK(file_text(source_path("specs/loamsheet.schema.json")) == spec_schema());
  CHECK(file_text(source_path("specs/keys.md")) == key_reference());
}

TEST_CASE("rewrite the schema and the key reference", "[.][rewrite]") {
  write_file(source_path("specs/loamsheet.schema.json"), spec_schema());
  write_file(source_path("specs/keys.md"), key_reference());
}

TEST_CASE("what a row wants is said in words") {
  const auto words = [](const char* path) { return expectation(*find_key(spec_keys(), path)); };
  CHECK(words("enclosure.height") == "a length with its unit, 10 cm to 5 m, such as 60 cm");
  CHECK(words("room.humidity") ==
        "a share in per cent or a range, 5 % to 100 %, or ? when it is not known, such as 35–60 %");
  CHECK(words("enclosure.walls.material") == "one of glass, acrylic, pvc, wood");
  CHECK(words("lamps[].at") == "a list of 3, such as [45 cm, 32 cm, 66 cm]");
  CHECK(words("build.plant_on") == "a date as year-month-day, such as 2026-03-07");
}
