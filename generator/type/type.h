// type: the faces of the sheets - measuring, and cutting fonts to the glyphs in use.
// The only user of HarfBuzz. Everything that needs a text's width asks here.
#pragma once
#include <map>
#include <memory>
#include <set>
#include <string>
#include <string_view>

#include "base/diagnostic.h"
#include "base/world.h"

namespace loamsheet {

enum class Face { regular, bold, italic };  // three at most: each costs a font in the file
inline constexpr int face_count = 3;

// Vertical measures of a face in parts of the em.
struct FaceMetrics {
  double ascent, descent, cap_height, x_height;  // descent is positive
};

// The three faces, loaded whole. Text is set without kerning and ligatures, so that what is
// measured is what libharu and Cairo paint: the sum of the glyphs' advances.
class Typefaces {
 public:
  Typefaces();
  ~Typefaces();
  Typefaces(Typefaces&&) noexcept;
  Typefaces& operator=(Typefaces&&) noexcept;

  // Width of a text in points at a size in points.
  double width(Face, double size, std::string_view utf8) const;
  FaceMetrics metrics(Face) const;
  bool has_glyph(Face, char32_t) const;
  const std::string& bytes(Face) const;  // the whole font file

  // A font file that holds only the glyphs of these code points (.notdef and blank kept).
  Outcome<std::string> cut(Face, const std::set<char32_t>& used) const;

  struct Impl;

 private:
  friend Outcome<Typefaces> load_typefaces(World&);
  std::unique_ptr<Impl> impl_;
};

// Reads the files that fonts/manifest.yaml names, as staged by the build.
Outcome<Typefaces> load_typefaces(World&);

}  // namespace loamsheet
