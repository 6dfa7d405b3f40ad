// faces: FreeType faces in memory, wrapped for Cairo.
#include <cairo-ft.h>
#include FT_MODULE_H

#include "draw/canvas.h"

namespace loamsheet {

// FreeType's objects are counted, since Cairo may keep a face beyond this object's life.
struct CanvasFaces::Library {
  FT_Library library = nullptr;
  std::array<FT_Face, face_count> faces{};
};

namespace {

cairo_user_data_key_t face_key, library_key;

void done_face(void* face) {
  FT_Done_Face(static_cast<FT_Face>(face));
}
void done_library(void* library) {
  FT_Done_Library(static_cast<FT_Library>(library));
}

// Hinting is off, so that outlines lie where the measures say.
FontFacePtr wrapped(FT_Library library, FT_Face face) {
  FontFacePtr wrapped(cairo_ft_font_face_create_for_ft_face(face, FT_LOAD_NO_HINTING));
  FT_Reference_Face(face);
  FT_Reference_Library(library);
  cairo_font_face_set_user_data(wrapped.get(), &library_key, library, done_library);
  cairo_font_face_set_user_data(wrapped.get(), &face_key, face, done_face);
  return wrapped;
}

FT_Face opened(FT_Library library, const std::string& bytes) {
  FT_Face face = nullptr;
  const auto* data = reinterpret_cast<const FT_Byte*>(bytes.data());
  if (FT_New_Memory_Face(library, data, static_cast<FT_Long>(bytes.size()), 0, &face) != 0) {
    return nullptr;
  }
  return face;
}

}  // namespace

CanvasFaces::CanvasFaces(const Typefaces& type) : library_(std::make_unique<Library>()) {
  if (FT_Init_FreeType(&library_->library) != 0) return;
  for (size_t i = 0; i < face_count; ++i) {
    library_->faces[i] = opened(library_->library, type.bytes(static_cast<Face>(i)));
    if (library_->faces[i]) faces_[i] = wrapped(library_->library, library_->faces[i]);
  }
}

CanvasFaces::~CanvasFaces() {
  for (auto& face : faces_) face.reset();
  for (FT_Face face : library_->faces) {
    if (face) FT_Done_Face(face);
  }
  if (library_->library) FT_Done_Library(library_->library);
}

bool CanvasFaces::usable() const {
  for (const auto& face : faces_) {
    if (!face || cairo_font_face_status(face.get()) != CAIRO_STATUS_SUCCESS) return false;
  }
  return true;
}

unsigned long CanvasFaces::glyph(Face f, char32_t c) const {
  return FT_Get_Char_Index(library_->faces[static_cast<size_t>(f)], c);
}

}  // namespace loamsheet
