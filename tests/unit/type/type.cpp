// The faces as staged, measured and cut.
#include "type/type.h"

#include <catch2/catch.hpp>

#include "base/text.h"
#include "world/world.h"

using namespace loamsheet;

namespace {

const std::vector<Face> all_faces{Face::regular, Face::bold, Face::italic};

Typefaces staged() {
  auto faces = load_typefaces(*real_world());
  REQUIRE(faces);
  return std::move(*faces.value);
}

// The faces that hold only these code points.
Typefaces cut_to(const Typefaces& whole, const std::set<char32_t>& used) {
  MemoryWorld world;
  const char* files[] = {"OpenSans-Regular.ttf", "OpenSans-Bold.ttf", "OpenSans-Italic.ttf"};
  for (Face f : all_faces) {
    auto small = whole.cut(f, used);
    REQUIRE(small);
    world.files[std::string("fonts/") + files[static_cast<size_t>(f)]] = *small.value;
  }
  auto faces = load_typefaces(world);
  REQUIRE(faces);
  return std::move(*faces.value);
}

}  // namespace

TEST_CASE("the files are those of the manifest") {
  const auto manifest = real_world()->read(LOAMSHEET_SOURCE "/fonts/manifest.yaml");
  REQUIRE(manifest);
  MemoryWorld empty;
  const auto problems = load_typefaces(empty).messages;
  REQUIRE(problems.size() == 3);
  const char* roles[] = {"regular", "bold", "italic"};
  for (size_t i = 0; i < 3; ++i) {
    const std::string file = split(problems[i].where.file, '/').back();
    const size_t line = manifest->find(std::string(roles[i]) + ":");
    REQUIRE(line != std::string::npos);
    CHECK(manifest->substr(line, manifest->find('\n', line) - line).find("file: " + file + ",") !=
          std::string::npos);
  }
}

TEST_CASE("a font that is missing or spoiled is a file fault, and all are named") {
  MemoryWorld world;
  world.files["fonts/OpenSans-Bold.ttf"] = "not a font";
  const auto faces = load_typefaces(world);
  CHECK_FALSE(faces);
  REQUIRE(faces.messages.size() == 3);
  CHECK(faces.messages[0].message == "the font file cannot be read");
  CHECK(faces.messages[1].message == "the font file has no TrueType outlines");
  CHECK(faces.messages[1].where.file == "fonts/OpenSans-Bold.ttf");
  CHECK(faces.messages[1].fault == Fault::file);
}

TEST_CASE("a width is the sum of the advances, so text can be set piece by piece") {
  const Typefaces type = staged();
  // Open Sans Regular: advances of 1171 for digits and 1296 for A in an em of 2048 units.
  CHECK(type.width(Face::regular, 10, "0") == Approx(10 * 0.571));
  CHECK(type.width(Face::regular, 1000, "A") == 632);
  for (Face f : all_faces) {
    CHECK(type.width(f, 9, "AVATAR fi 21–24 °C") ==
          Approx(type.width(f, 9, "AVAT") + type.width(f, 9, "AR fi 21–") +
                 type.width(f, 9, "24 °C")));
    CHECK(type.width(f, 9, "") == 0);
    CHECK(type.width(f, 9, "0") == type.width(f, 9, "8"));
  }
}

TEST_CASE("measures of a face are parts of the em") {
  const Typefaces type = staged();
  for (Face f : all_faces) {
    const FaceMetrics m = type.metrics(f);
    CHECK(m.cap_height == Approx(1462 / 2048.0));
    CHECK(m.ascent == Approx(2189 / 2048.0));
    CHECK(m.descent == Approx(600 / 2048.0));
    CHECK(m.x_height > 0.5);
    CHECK(m.x_height < m.cap_height);
  }
}

TEST_CASE("the signs that the sheets use are in every face") {
  const Typefaces type = staged();
  for (Face f : all_faces) {
    for (char32_t c : std::u32string(U"°–—×−≤≥±≈½¼¾⅛⅜⅝⅞²³•·…µ’‘“”′″\u00a0Øéß")) {
      CAPTURE(utf8(c));
      CHECK(type.has_glyph(f, c));
    }
    for (char32_t c : std::u32string(U"→☐✓⌀⅓\u2011")) CHECK_FALSE(type.has_glyph(f, c));
  }
}

TEST_CASE("a cut font keeps the used glyphs, the blank and all measures, and no other glyph") {
  const Typefaces whole = staged();
  const Typefaces small = cut_to(whole, {U'A', U'é', U'½', U'–', U'≈', U'→'});
  for (Face f : all_faces) {
    for (char32_t c : std::u32string(U"Aé½–≈ ")) {
      CHECK(small.has_glyph(f, c));
      CHECK(small.width(f, 9, utf8(c)) == whole.width(f, 9, utf8(c)));
    }
    for (char32_t c : std::u32string(U"BZè—≤→")) CHECK_FALSE(small.has_glyph(f, c));
    CHECK(small.metrics(f).cap_height == whole.metrics(f).cap_height);
    CHECK(small.bytes(f).size() < whole.bytes(f).size() / 20);
  }
}

TEST_CASE("text outside the faces is measured as the empty box that is painted") {
  const Typefaces type = staged();
  CHECK(type.width(Face::regular, 9, "☐") == type.width(Face::regular, 9, "✓"));
  CHECK(type.width(Face::regular, 9, "☐") > 0);
}
