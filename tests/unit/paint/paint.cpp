// Pages as PDF bytes. The streams are uncompressed, so the tests read them as text.
#include "paint/paint.h"

#include <catch2/catch.hpp>

#include "world/world.h"

using namespace loamsheet;

namespace {

const Typefaces& faces() {
  static const auto world = real_world();
  static const auto loaded = load_typefaces(*world);
  REQUIRE(loaded);
  return *loaded.value;
}

TextMark text(const std::string& t, Point at, Face face = Face::regular) {
  return {t, at, 9.5, faces().width(face, 9.5, t), face, 0, 0};
}

Pages pages_of(std::vector<std::vector<PageMark>> all) {
  Pages pages;
  pages.tags = {{"Document", -1, "", ""}};
  for (auto& marks : all) pages.pages.push_back(Page{595.28, 841.89, std::move(marks), {}});
  return pages;
}

std::string painted(const Pages& pages) {
  auto bytes = paint(pages, faces());
  for (const auto& m : bytes.messages) FAIL(m.message);
  REQUIRE(bytes);
  return *bytes.value;
}

// The content streams of the pages: those that hold text or lines, not fonts or maps.
std::vector<std::string> contents(const std::string& pdf) {
  std::vector<std::string> found;
  for (size_t at = pdf.find("stream\r\n"); at != std::string::npos;
       at = pdf.find("stream\r\n", at)) {
    const size_t end = pdf.find("endstream", at);
    const std::string stream = pdf.substr(at + 8, end - at - 8);
    if (stream.find("\nET") != std::string::npos || stream.find("\nS\n") != std::string::npos) {
      found.push_back(stream);
    }
    at = end + 9;
  }
  return found;
}

size_t count(const std::string& in, const std::string& what) {
  size_t n = 0;
  for (size_t at = in.find(what); at != std::string::npos; at = in.find(what, at + 1)) ++n;
  return n;
}

}  // namespace

TEST_CASE("every text mark is one text object, in list order, and nothing else is") {
  const auto streams = contents(painted(
      pages_of({{BoxMark{{10, 10, 50, 50}, 0.9, 0, 1}, text("moss", {40, 700}),
                 RuleMark{{40, 690}, {500, 690}, 0.5, 0.3, {}}, text("fern", {41.25, 687})},
                {text("clay", {42, 600}, Face::bold), FigureMark{"plan", {50, 50, 90, 90}, 0}}})));
  REQUIRE(streams.size() == 2);
  CHECK(count(streams[0], "BT\n") == 2);
  CHECK(count(streams[0], "ET\n") == 2);
  CHECK(streams[0].find("40 700 Td") < streams[0].find("41.25 687 Td"));
  CHECK(streams[0].find("41.25 687 Td") != std::string::npos);
  CHECK(count(streams[1], "BT\n") == 1);
}

TEST_CASE("boxes and rules are painted with their greys, widths and dashes") {
  const auto streams = contents(painted(
      pages_of({{BoxMark{{10, 20, 50, 60}, 0.9, -1, 1}, BoxMark{{10, 20, 50, 60}, -1, 0.25, 2},
                 RuleMark{{40, 690}, {500, 690}, 0.5, 0, {5, 3}}, text("moss", {40, 700})}})));
  REQUIRE(streams.size() == 1);
  const std::string& s = streams[0];
  CHECK(s.find("0.9 g\n10 20 40 40 re\nf\n") != std::string::npos);
  CHECK(s.find("0.25 G\n2 w\n10 20 40 40 re\nS\n") != std::string::npos);
  CHECK(s.find("[5 3 ] 0 d\n40 690 m\n500 690 l\nS\n") != std::string::npos);
  CHECK(s.find("0 g\nBT") != std::string::npos);
}

TEST_CASE("only faces in use are in the file, cut to their letters") {
  const std::string one = painted(pages_of({{text("moss", {40, 700})}}));
  CHECK(count(one, "/FontFile2") == 1);
  const std::string three =
      painted(pages_of({{text("moss", {40, 700}), text("moss", {40, 680}, Face::bold),
                         text("moss", {40, 660}, Face::italic)}}));
  CHECK(count(three, "/FontFile2") == 3);
  CHECK(one.size() < faces().bytes(Face::regular).size());
}

TEST_CASE("pages are painted without a date") {
  const Pages pages = pages_of({{text("90 \u00D7 45 cm \u2013 \u201Cdamp\u201D", {40, 700})}});
  const std::string pdf = painted(pages);
  CHECK(pdf.find("Date") == std::string::npos);
  CHECK(pdf.starts_with("%PDF-"));
}

TEST_CASE("the first failure of the library is the error") {
  Pages pages = pages_of({{text("moss", {40, 700})}});
  std::get<TextMark>(pages.pages[0].marks[0]).size = 9000;
  const auto bytes = paint(pages, faces());
  CHECK(!bytes);
  REQUIRE(bytes.messages.size() == 1);
  CHECK(bytes.messages[0].fault == Fault::internal);
  CHECK(bytes.messages[0].message.find("the PDF library failed with code") == 0);
}

TEST_CASE("pages without text are painted without a font") {
  const std::string pdf = painted(pages_of({{RuleMark{{10, 10}, {90, 10}, 0.5, 0, {}}}}));
  CHECK(count(pdf, "/FontFile2") == 0);
  CHECK(contents(pdf).size() == 1);
}
