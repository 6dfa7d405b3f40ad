// faces: FreeType faces in memory, wrapped for Cairo.
#include <cairo-ft.h>

#include "base/code_points.h"
#include "base/text.h"
#include "draw/canvas.h"

namespace loamsheet {

namespace {

// Shared, since Cairo may keep a face longer than the drawing lasts.
using LibraryPtr = std::shared_ptr<FT_LibraryRec_>;

LibraryPtr new_library() {
  FT_Library library = nullptr;
  if (FT_Init_FreeType(&library) != 0) return nullptr;
  return {library, FT_Done_FreeType};
}

}  // namespace

struct CanvasFaces::Library {
  LibraryPtr library = new_library();
  std::array<FT_Face, face_count> faces{};  // owned by Cairo's faces
};

namespace {

cairo_user_data_key_t held_key;

// What a Cairo face needs as long as Cairo keeps it.
struct Held {
  std::string bytes;
  LibraryPtr library;
  FT_Face face = nullptr;
  Held(std::string b, LibraryPtr l) : bytes(std::move(b)), library(std::move(l)) {}
  Held(const Held&) = delete;
  Held& operator=(const Held&) = delete;
  ~Held() {
    if (face) FT_Done_Face(face);
  }
};

bool load(Held& held) {
  const auto* data = reinterpret_cast<const FT_Byte*>(held.bytes.data());
  return FT_New_Memory_Face(held.library.get(), data, static_cast<FT_Long>(held.bytes.size()), 0,
                            &held.face) == 0;
}

void drop(void* held) {
  delete static_cast<Held*>(held);
}

using Used = std::array<CodePoints, face_count>;

Used used_in(std::span<const Figure> figures) {
  Used used;
  for (const Figure& f : figures) {
    for (const Mark& m : f.marks) {
      const auto* label = std::get_if<Label>(&m);
      if (!label) continue;
      for (char32_t c : decoded(label->text)) used[static_cast<size_t>(label->face)].add(c);
    }
  }
  return used;
}

}  // namespace

CanvasFaces::CanvasFaces(const Typefaces& type, std::span<const Figure> figures)
    : library_(std::make_unique<Library>()) {
  if (!library_->library) problems_.push_back(broken("no FreeType"));
  const Used used = used_in(figures);
  for (size_t i = 0; i < face_count && problems_.empty(); ++i) {
    if (used[i].all().empty()) continue;
    Outcome<std::string> cut = type.cut(static_cast<Face>(i), used[i].all());
    if (!cut)
      problems_ = std::move(cut.messages);
    else if (!open(i, std::move(*cut.value)))
      problems_.push_back(broken("a face does not open"));
  }
}

CanvasFaces::~CanvasFaces() = default;

// Hinting is off, so that outlines lie where the measures say.
bool CanvasFaces::open(size_t i, std::string bytes) {
  auto held = std::make_unique<Held>(std::move(bytes), library_->library);
  if (!load(*held)) return false;
  library_->faces[i] = held->face;
  faces_[i].reset(cairo_ft_font_face_create_for_ft_face(held->face, FT_LOAD_NO_HINTING));
  if (cairo_font_face_status(faces_[i].get()) != CAIRO_STATUS_SUCCESS) return false;
  return cairo_font_face_set_user_data(faces_[i].get(), &held_key, held.release(), drop) ==
         CAIRO_STATUS_SUCCESS;
}

unsigned long CanvasFaces::glyph(Face f, char32_t c) const {
  return FT_Get_Char_Index(library_->faces[static_cast<size_t>(f)], c);
}

}  // namespace loamsheet
