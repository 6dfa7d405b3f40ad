// Every value knows the line and column it was typed at, in code points.
#include <catch2/catch.hpp>

#include "read_helpers.h"

using namespace loamsheet;

namespace {

Node untyped(const std::string& text) {
  auto read = read_document(text, "d.yaml", {});
  REQUIRE(read);
  return *read.value;
}

void check_place(const Node& root, const char* path, Span expected) {
  const Node* node = root.find(path);
  INFO(path);
  REQUIRE(node);
  expected.file = "d.yaml";
  CHECK(node->where.line == expected.line);
  CHECK(node->where.column == expected.column);
  CHECK(node->where.length == expected.length);
  CHECK(node->where.file == expected.file);
}

}  // namespace

TEST_CASE("plain, quoted and block scalars have their places") {
  const Node root = untyped("a: one two  # three\nb: \"q \\\" q\"\nc: 'it''s'\nd: |\n  block\n");
  check_place(root, "a", {"", 1, 4, 7});
  check_place(root, "b", {"", 2, 4, 8});
  check_place(root, "c", {"", 3, 4, 7});
  check_place(root, "d", {"", 4, 4, 1});
  CHECK(root.text("a") == "one two");
  CHECK(root.text("b") == "q \" q");
  CHECK(root.text("c") == "it's");
  CHECK(root.find("a")->name.column == 1);
}

TEST_CASE("columns count code points, not bytes") {
  const Node root = untyped("{t: 17–26 °C, h: 35–60 %, m: ½ L}\n");
  check_place(root, "t", {"", 1, 5, 8});
  check_place(root, "h", {"", 1, 18, 7});
  check_place(root, "m", {"", 1, 30, 3});
  CHECK(root.find("m")->typed == "½ L");
}

TEST_CASE("maps and lists in braces reach to their closing brace") {
  const Node root = untyped("a: [1, [2, 3] , {b: 4}]  # ]\nc:\n  - d: 5\n  - 6\n");
  check_place(root, "a", {"", 1, 4, 20});
  check_place(root, "a[1]", {"", 1, 8, 6});
  check_place(root, "a[2]", {"", 1, 17, 6});
  check_place(root, "a[2].b", {"", 1, 21, 1});
  check_place(root, "c[0].d", {"", 3, 8, 1});
  check_place(root, "c[1]", {"", 4, 5, 1});
}

TEST_CASE("text over several lines is shown at its first") {
  const Node root = untyped("a: one\n  two\n  three\nb: [x,\n  y]\n");
  CHECK(root.text("a") == "one two three");
  check_place(root, "a", {"", 1, 4, 3});
  check_place(root, "b", {"", 4, 4, 3});
  check_place(root, "b[1]", {"", 5, 3, 1});
}

TEST_CASE("a byte order mark and carriage returns shift nothing") {
  const Node root = untyped(
      "\xEF\xBB\xBF"
      "a: one\r\nb: two\r\n");
  check_place(root, "a", {"", 1, 4, 3});
  check_place(root, "b", {"", 2, 4, 3});
  CHECK(root.text("b") == "two");
}

TEST_CASE("a lone question mark is a value wherever a value may stand") {
  const Node root =
      untyped("a: ?\nb: [?, ? ]\nc: {d: ?, e: ? }\nf:\n  - ?\ng: \"? no\"\nh: why?  # ?\n");
  for (const char* path : {"a", "b[0]", "b[1]", "c.d", "c.e", "f[0]"}) {
    INFO(path);
    CHECK(root.text(path) == "?");
  }
  CHECK(root.text("g") == "? no");
  CHECK(root.text("h") == "why?");
}

TEST_CASE("a path that leads nowhere finds nothing") {
  const Node root = untyped("a: [1, 2]\nb: {c: 3}\n");
  CHECK(root.find("a[1]"));
  for (const char* path : {"a[2]", "a[x]", "a[", "a.b", "b.d", "b[0]", "c", "[0]", "b.c.d"}) {
    INFO(path);
    CHECK_FALSE(root.find(path));
  }
}
