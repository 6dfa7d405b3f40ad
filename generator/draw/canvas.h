// canvas: a Cairo surface and the faces to write on it with. Inside the draw stage only.
#pragma once
#include <cairo.h>

#include <array>
#include <memory>

#include "figure/figure.h"
#include "type/type.h"

namespace loamsheet {

struct SurfaceFree {
  void operator()(cairo_surface_t* s) const { cairo_surface_destroy(s); }
};
struct ContextFree {
  void operator()(cairo_t* c) const { cairo_destroy(c); }
};
struct FontFaceFree {
  void operator()(cairo_font_face_t* f) const { cairo_font_face_destroy(f); }
};
using SurfacePtr = std::unique_ptr<cairo_surface_t, SurfaceFree>;
using ContextPtr = std::unique_ptr<cairo_t, ContextFree>;
using FontFacePtr = std::unique_ptr<cairo_font_face_t, FontFaceFree>;

// The three faces as Cairo knows them, from the bytes that the type stage measured.
class CanvasFaces {
 public:
  explicit CanvasFaces(const Typefaces&);
  ~CanvasFaces();
  CanvasFaces(const CanvasFaces&) = delete;
  CanvasFaces& operator=(const CanvasFaces&) = delete;

  bool usable() const;
  cairo_font_face_t* operator[](Face f) const { return faces_[static_cast<size_t>(f)].get(); }
  unsigned long glyph(Face, char32_t) const;

 private:
  struct Library;
  std::unique_ptr<Library> library_;
  std::array<FontFacePtr, face_count> faces_;
};

struct Canvas {
  cairo_t* context;  // one unit is a millimetre, y down from the top
  const Typefaces& type;
  const CanvasFaces& faces;
};

// Paints a figure in list order, its lower left corner at the canvas's lower left.
void paint(const Canvas&, const Figure&);

}  // namespace loamsheet
