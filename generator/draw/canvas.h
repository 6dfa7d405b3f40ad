// canvas: a Cairo surface and the faces to write on it with. Inside the draw stage only.
#pragma once
#include <cairo.h>

#include <array>
#include <memory>
#include <span>
#include <vector>

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

// The faces as Cairo knows them: those in use, cut to the glyphs that the figures need.
class CanvasFaces {
 public:
  CanvasFaces(const Typefaces&, std::span<const Figure>);
  ~CanvasFaces();
  CanvasFaces(const CanvasFaces&) = delete;
  CanvasFaces& operator=(const CanvasFaces&) = delete;

  // What went wrong in opening them, if anything did.
  const std::vector<Diagnostic>& problems() const { return problems_; }
  cairo_font_face_t* operator[](Face f) const { return faces_[static_cast<size_t>(f)].get(); }
  unsigned long glyph(Face, char32_t) const;

 private:
  struct Library;
  bool open(size_t face, std::string bytes);
  std::unique_ptr<Library> library_;
  std::array<FontFacePtr, face_count> faces_;
  std::vector<Diagnostic> problems_;
};

struct Canvas {
  cairo_t* context;  // one unit is a millimetre, y down from the top
  const Typefaces& type;
  const CanvasFaces& faces;
};

Diagnostic broken(const std::string& what);  // a fault of the program, in drawing

// Paints a figure in list order, its lower left corner at the canvas's lower left.
void paint(const Canvas&, const Figure&);

}  // namespace loamsheet
