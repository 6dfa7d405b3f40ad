#include "type/type.h"

#include <hb-ot.h>

#include "base/text.h"
#include "type/faces.h"

namespace loamsheet {
namespace {

// The staged files, in the order of Face, as fonts/manifest.yaml names them (a test compares).
constexpr std::array<const char*, face_count> files = {"OpenSans-Regular.ttf", "OpenSans-Bold.ttf",
                                                       "OpenSans-Italic.ttf"};

// Whole thousandths, cut off: the widths that a PDF font states and libharu counts with.
int thousandths(hb_font_t* font, char32_t c) {
  hb_codepoint_t glyph = 0;
  hb_font_get_nominal_glyph(font, c, &glyph);  // unknown: glyph 0, the empty box
  const unsigned em = hb_face_get_upem(hb_font_get_face(font));
  return static_cast<int>(static_cast<unsigned>(hb_font_get_glyph_h_advance(font, glyph)) * 1000 /
                          em);
}

double measure(hb_font_t* font, hb_ot_metrics_tag_t tag) {
  hb_position_t v = 0;
  hb_ot_metrics_get_position_with_fallback(font, tag, &v);
  return static_cast<double>(v) / hb_face_get_upem(hb_font_get_face(font));
}

FaceMetrics metrics_of(hb_font_t* font) {
  return {measure(font, HB_OT_METRICS_TAG_HORIZONTAL_ASCENDER),
          -measure(font, HB_OT_METRICS_TAG_HORIZONTAL_DESCENDER),
          measure(font, HB_OT_METRICS_TAG_CAP_HEIGHT), measure(font, HB_OT_METRICS_TAG_X_HEIGHT)};
}

Diagnostic unusable(const std::string& path, const std::string& what) {
  Diagnostic d;
  d.where.file = path;
  d.message = what;
  d.expected = "a TrueType font, as the build stages it from the package fonts-open-sans";
  d.hint = "build loamsheet again, so that the fonts are staged anew";
  d.fault = Fault::file;
  return d;
}

// A face from its bytes; false when they are no TrueType font.
bool open(LoadedFace& f) {
  const BlobPtr blob(hb_blob_create(f.bytes.data(), static_cast<unsigned>(f.bytes.size()),
                                    HB_MEMORY_MODE_READONLY, nullptr, nullptr));
  f.face.reset(hb_face_create(blob.get(), 0));
  const BlobPtr outlines(hb_face_reference_table(f.face.get(), HB_TAG('g', 'l', 'y', 'f')));
  if (hb_face_get_glyph_count(f.face.get()) == 0 || hb_blob_get_length(outlines.get()) == 0) {
    return false;
  }
  f.font.reset(hb_font_create(f.face.get()));
  f.metrics = metrics_of(f.font.get());
  for (char32_t c = 0; c < LoadedFace::table_end; ++c) {
    f.table[c] = static_cast<short>(thousandths(f.font.get(), c));
  }
  return true;
}

std::optional<Diagnostic> load(World& world, const std::string& file, LoadedFace& into) {
  const std::string path = world.data("fonts/" + file);
  std::optional<std::string> bytes = world.read(path);
  if (!bytes) return unusable(path, "the font file cannot be read");
  into.bytes = std::move(*bytes);
  if (!open(into)) return unusable(path, "the font file has no TrueType outlines");
  return std::nullopt;
}

}  // namespace

int LoadedFace::advance(char32_t c) const {
  return c < table_end ? table[c] : thousandths(font.get(), c);
}

Typefaces::Typefaces() : impl_(std::make_unique<Impl>()) {}
Typefaces::~Typefaces() = default;
Typefaces::Typefaces(Typefaces&&) noexcept = default;
Typefaces& Typefaces::operator=(Typefaces&&) noexcept = default;

double Typefaces::width(Face face, double size, std::string_view utf8) const {
  const LoadedFace& f = (*impl_)[face];
  int sum = 0;
  bool ascii = true;
  for (char c : utf8) ascii = ascii && static_cast<unsigned char>(c) < 0x80;
  if (ascii) {
    for (char c : utf8) sum += f.table[static_cast<unsigned char>(c)];
  } else {
    for (char32_t c : decoded(utf8)) sum += f.advance(c);
  }
  return sum * size / 1000.0;
}

FaceMetrics Typefaces::metrics(Face face) const {
  return (*impl_)[face].metrics;
}

bool Typefaces::has_glyph(Face face, char32_t c) const {
  hb_codepoint_t glyph = 0;
  return hb_font_get_nominal_glyph((*impl_)[face].font.get(), c, &glyph) && glyph != 0;
}

const std::string& Typefaces::bytes(Face face) const {
  return (*impl_)[face].bytes;
}

Outcome<Typefaces> load_typefaces(World& world) {
  Sink sink;
  Typefaces faces;
  for (size_t i = 0; i < files.size(); ++i) {
    if (auto problem = load(world, files[i], faces.impl_->faces[i])) sink.add(std::move(*problem));
  }
  if (sink.failed()) return {std::nullopt, sink.take()};
  return {std::move(faces), sink.take()};
}

}  // namespace loamsheet
