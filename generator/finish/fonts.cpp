#include <qpdf/QPDF.hh>
#include <qpdf/QPDFObjectHandle.hh>

#include "base/text.h"
#include "finish/sfnt.h"
#include "finish/steps.h"
#include "finish/to_unicode.h"

namespace loamsheet {
namespace {

using Object = QPDFObjectHandle;

std::string stream_bytes(Object stream) {
  const auto data = stream.getStreamData(qpdf_dl_generalized);
  return {reinterpret_cast<const char*>(data->getBuffer()), data->getSize()};
}

// A composite font: the outer dictionary, its one descendant, and the font file.
struct Composite {
  Object font, cid_font, descriptor;
  Sfnt file;
};

// The glyph of each CID that has one, by CID.
using Glyphs = std::map<int, int>;

Glyphs read_map(const std::string& bytes) {
  Glyphs glyphs{{0, 0}};
  for (size_t i = 0; i + 1 < bytes.size(); i += 2) {
    const int glyph =
        static_cast<unsigned char>(bytes[i]) << 8 | static_cast<unsigned char>(bytes[i + 1]);
    if (glyph != 0) glyphs[static_cast<int>(i / 2)] = glyph;
  }
  return glyphs;
}

Glyphs identity(int count) {
  Glyphs glyphs;
  for (int i = 0; i < count; ++i) glyphs[i] = i;
  return glyphs;
}

// libharu maps all 65 536 CIDs, whatever the font holds; Cairo's fonts lack the map.
Glyphs repair_glyph_map(QPDF& pdf, Composite& c) {
  Object map = c.cid_font.getKey("/CIDToGIDMap");
  if (!map.isStream()) {
    c.cid_font.replaceKey("/CIDToGIDMap", Object::newName("/Identity"));
    return identity(c.file.glyphs());
  }
  std::string bytes = stream_bytes(map);
  Glyphs glyphs = read_map(bytes);
  bytes.resize(2 * size_t(glyphs.rbegin()->first + 1));
  c.cid_font.replaceKey("/CIDToGIDMap", pdf.newStream(bytes));
  return glyphs;
}

// One bit a CID, the first at the top (ISO 32000-1, 9.8.3.2).
std::string bits(const Glyphs& glyphs) {
  std::string set(size_t(glyphs.rbegin()->first) / 8 + 1, '\0');
  for (const auto& [cid, glyph] : glyphs) {
    set[size_t(cid) / 8] = static_cast<char>(set[size_t(cid) / 8] | 0x80 >> cid % 8);
  }
  return set;
}

// libharu's names end in the style a second time ("HPDFAB+OpenSans-Bold,Bold").
void repair_name(Composite& c) {
  std::string name = c.descriptor.getKey("/FontName").getName();
  name = name.substr(0, name.find(','));
  c.font.replaceKey("/BaseFont", Object::newName(name));
  c.cid_font.replaceKey("/BaseFont", Object::newName(name));
  c.descriptor.replaceKey("/FontName", Object::newName(name));
}

// libharu leaves the heights out.
void repair_heights(Composite& c) {
  if (c.descriptor.hasKey("/CapHeight")) return;
  const auto cap = c.file.cap_height();
  if (!cap) throw Mismatch("an embedded font does not say how high its capitals are");
  c.descriptor.replaceKey("/CapHeight", Object::newReal(fixed(*cap, 0)));
  c.descriptor.replaceKey("/XHeight", Object::newReal(fixed(c.file.x_height().value_or(0), 0)));
}

// libharu's CIDs are UTF-16 code units, and it says so in a way that readers reject.
void repair_haru_text(QPDF& pdf, Composite& c, const Glyphs& glyphs) {
  std::vector<int> codes;
  for (const auto& [cid, glyph] : glyphs) {
    if (cid > 0) codes.push_back(cid);
  }
  c.font.replaceKey("/ToUnicode", pdf.newStream(to_unicode(codes)));
  c.cid_font.replaceKey(
      "/CIDSystemInfo",
      Object::parse("<< /Registry (Adobe) /Ordering (Identity) /Supplement 0 >>"));
}

void repair_composite(QPDF& pdf, Object font, bool cid_sets) {
  Object cid_font = font.getKey("/DescendantFonts").getArrayItem(0);
  Object descriptor = cid_font.getKey("/FontDescriptor");
  Composite c{font, cid_font, descriptor, Sfnt(stream_bytes(descriptor.getKey("/FontFile2")))};
  const bool haru = cid_font.getKey("/CIDToGIDMap").isStream();
  const Glyphs glyphs = repair_glyph_map(pdf, c);
  cid_font.removeKey("/DW2");  // of vertical writing
  repair_name(c);
  repair_heights(c);
  if (haru) repair_haru_text(pdf, c, glyphs);
  if (cid_sets) descriptor.replaceKey("/CIDSet", pdf.newStream(bits(glyphs)));
}

}  // namespace

void repair_fonts(QPDF& pdf, bool cid_sets) {
  for (auto& object : pdf.getAllObjects()) {
    if (object.isDictionaryOfType("/Font", "/Type0")) repair_composite(pdf, object, cid_sets);
  }
}

}  // namespace loamsheet
