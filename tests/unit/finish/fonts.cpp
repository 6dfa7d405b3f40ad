#include "base/text.h"
#include "finish/sfnt.h"
#include "finish/to_unicode.h"
#include "sheet.h"

namespace loamsheet {
namespace {

std::vector<Object> composite_fonts(QPDF& pdf) {
  std::vector<Object> fonts;
  for (auto& object : pdf.getAllObjects()) {
    if (object.isDictionaryOfType("/Font", "/Type0")) fonts.push_back(object);
  }
  return fonts;
}

Object cid_font(Object font) {
  return font.getKey("/DescendantFonts").getArrayItem(0);
}

}  // namespace

TEST_CASE("composite fonts have what PDF/A asks for") {
  Opened sheet(Archive::plain);
  const auto fonts = composite_fonts(sheet.pdf);
  REQUIRE(fonts.size() == 3);  // regular and bold by libharu, one by Cairo
  for (const auto& font : fonts) {
    Object descriptor = cid_font(font).getKey("/FontDescriptor");
    CHECK(descriptor.getKey("/CapHeight").getNumericValue() > 600);
    CHECK(descriptor.getKey("/CIDSet").isStream());
    CHECK(!cid_font(font).getKey("/CIDToGIDMap").isNull());
    CHECK(descriptor.getKey("/FontName").getName().find(',') == std::string::npos);
    CHECK(stream_text(Object(font).getKey("/ToUnicode")).find("begincidrange") ==
          std::string::npos);
  }
}

TEST_CASE("later parts of PDF/A get no set of CIDs, which would have to name unused ones") {
  Opened sheet(Archive::full);
  const auto fonts = composite_fonts(sheet.pdf);
  REQUIRE(fonts.size() == 3);
  for (const auto& font : fonts) {
    CHECK(!cid_font(font).getKey("/FontDescriptor").hasKey("/CIDSet"));
  }
}

TEST_CASE("libharu's glyph map ends with the last code in use") {
  Opened sheet(Archive::full);
  int maps = 0;
  for (const auto& font : composite_fonts(sheet.pdf)) {
    Object map = cid_font(font).getKey("/CIDToGIDMap");
    if (!map.isStream()) continue;
    ++maps;
    const std::string bytes = stream_text(map);
    CHECK(bytes.size() < 2 * 0x2300);
    CHECK(bytes.substr(bytes.size() - 2) != std::string(2, '\0'));
  }
  CHECK(maps == 2);
}

TEST_CASE("widths are those that the text was measured with") {
  Opened sheet(Archive::full);
  int measured = 0;
  for (const auto& font : composite_fonts(sheet.pdf)) {
    Object widths = cid_font(font).getKey("/W");
    for (int i = 0; i < widths.getArrayNItems(); i += 2) {
      const auto code = static_cast<char32_t>(widths.getArrayItem(i).getIntValue());
      const bool regular = Object(font).getKey("/BaseFont").getName().ends_with("+OpenSans");
      if (!cid_font(font).getKey("/CIDToGIDMap").isStream() || !regular || code == 0) continue;
      const double width = widths.getArrayItem(i + 1).getArrayItem(0).getNumericValue();
      CHECK(width == Approx(faces().width(Face::regular, 1000, utf8(code))).margin(0.01));
      ++measured;
    }
  }
  CHECK(measured > 10);
}

TEST_CASE("the text map joins neighbours, but not over a change of the high byte") {
  const std::string map = to_unicode({0x41, 0x42, 0x43, 0x61, 0xff, 0x100, 0x2013});
  CHECK(map.find("5 beginbfrange\n<0041><0043><0041>\n<0061><0061><0061>\n<00ff><00ff><00ff>\n"
                 "<0100><0100><0100>\n<2013><2013><2013>\nendbfrange\n") != std::string::npos);
}

TEST_CASE("more than a hundred ranges are written in blocks") {
  std::vector<int> codes;
  for (int i = 0; i < 101; ++i) codes.push_back(0x100 + 2 * i);
  const std::string map = to_unicode(codes);
  CHECK(map.find("100 beginbfrange") != std::string::npos);
  CHECK(map.find("\n1 beginbfrange\n<01c8>") != std::string::npos);
}

TEST_CASE("a font file gives its measures, and is refused when it is cut off") {
  const std::string& bytes = faces().bytes(Face::regular);
  const Sfnt font(bytes);
  const double cap_height = 1000 * faces().metrics(Face::regular).cap_height;
  CHECK(font.cap_height().value() == Approx(cap_height).margin(0.01));
  CHECK(font.glyphs() > 900);
  CHECK_THROWS(Sfnt(bytes.substr(0, 40)));
  CHECK_THROWS(Sfnt(bytes.substr(0, 400)).glyphs());
}

}  // namespace loamsheet
