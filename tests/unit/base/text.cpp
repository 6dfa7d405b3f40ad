#include "base/text.h"

#include <catch2/catch.hpp>
#include <limits>

using namespace loamsheet;

TEST_CASE("fixed decimals, never a minus zero") {
  CHECK(fixed(13.5, 1) == "13.5");
  CHECK(fixed(2, 3) == "2.000");
  CHECK(fixed(-0.0004, 3) == "0.000");
  CHECK(fixed(-0.6, 0) == "-1");
  CHECK(fixed(1e20, 0) == "100000000000000000000");
}

TEST_CASE("significant digits without an exponent or trailing zeros") {
  CHECK(significant(40.5, 6) == "40.5");
  CHECK(significant(123456.7, 6) == "123457");
  CHECK(significant(1234567, 3) == "1230000");
  CHECK(significant(0.000123456789, 3) == "0.000123");
  CHECK(significant(999.9996, 6) == "1000");
  CHECK(significant(-0.05, 2) == "-0.05");
  CHECK(significant(0, 6) == "0");
  CHECK(significant(1e-9, 2) == "1.0e-09");
}

TEST_CASE("what is not a number is said so") {
  CHECK(significant(std::numeric_limits<double>::infinity(), 3) == "inf");
  CHECK(significant(std::numeric_limits<double>::quiet_NaN(), 3) == "nan");
}

TEST_CASE("rounding to digits") {
  CHECK(rounded(1234.5678, 6) == 1234.57);
  CHECK(rounded(-0.00012344, 3) == -0.000123);
  CHECK(rounded(0, 6) == 0);
}

TEST_CASE("code points, with invalid bytes counting as one each") {
  CHECK(code_points("17–26 °C") == 8);
  CHECK(code_points("") == 0);
  CHECK(code_points("a\x80\x80z") == 4);
  CHECK(code_points("\xE2\x82") == 2);  // a sequence that ends too early
}

TEST_CASE("slices never split a code point") {
  CHECK(slice("17–26 °C", 2, 1) == "–");
  CHECK(slice("17–26 °C", 6, 9) == "°C");
  CHECK(slice("abc", 5, 2).empty());
  CHECK(slice("a\x80z", 1, 1) == "\x80");
}

TEST_CASE("where text stops being UTF-8") {
  CHECK_FALSE(invalid_utf8("plain – 🌿"));
  CHECK(invalid_utf8("ab\xFFz") == 2u);
  CHECK(invalid_utf8("\xC0\x80") == 0u);          // overlong
  CHECK(invalid_utf8("\xED\xA0\x80") == 0u);      // a surrogate
  CHECK(invalid_utf8("\xF4\x90\x80\x80") == 0u);  // beyond the last code point
  CHECK(invalid_utf8("x\xE2\x82") == 1u);
}

TEST_CASE("UTF-8 there and back") {
  for (char32_t c : {U'a', U'é', U'–', U'🌿'}) {
    const std::string bytes = utf8(c);
    CHECK_FALSE(invalid_utf8(bytes));
    CHECK(decoded(bytes) == std::u32string(1, c));
  }
  CHECK(decoded("a\xFFz") == U"a\uFFFDz");
}

TEST_CASE("control characters become blanks") {
  CHECK(visible("a\tb\x7F") == "a b ");
}

TEST_CASE("edit distance") {
  CHECK(edit_distance("", "abc") == 3);
  CHECK(edit_distance("kitten", "sitting") == 3);
  CHECK(edit_distance("peperomea", "peperomia") == 1);
  CHECK(edit_distance("dpeth", "depth") == 1);  // neighbours swapped
  CHECK(edit_distance("café", "cafe") == 1);
}

TEST_CASE("the nearest known name, if near enough to be meant") {
  const std::vector<std::string> known = {"depth", "width", "height", "x"};
  CHECK(closest("dpeth", known) == "depth");
  CHECK(closest("heigth", known) == "height");
  CHECK_FALSE(closest("colour", known));
  CHECK_FALSE(closest("q", known));
  CHECK_FALSE(closest("", known));
}

TEST_CASE("splitting, joining and trimming") {
  CHECK(split("a,,b", ',') == std::vector<std::string>{"a", "", "b"});
  CHECK(split("", ',').size() == 1);
  const std::vector<std::string> parts = {"a", "b", "c"};
  CHECK(join(parts, ", ") == "a, b, c");
  CHECK(trimmed(" \t a b\r\n") == "a b");
  CHECK(trimmed(" \n").empty());
}
