// faces: the loaded faces behind Typefaces. Inside the type stage only.
#pragma once
#include <hb.h>

#include <array>
#include <memory>

#include "type/type.h"

namespace loamsheet {

struct BlobFree {
  void operator()(hb_blob_t* b) const { hb_blob_destroy(b); }
};
struct FaceFree {
  void operator()(hb_face_t* f) const { hb_face_destroy(f); }
};
struct FontFree {
  void operator()(hb_font_t* f) const { hb_font_destroy(f); }
};
using BlobPtr = std::unique_ptr<hb_blob_t, BlobFree>;
using FacePtr = std::unique_ptr<hb_face_t, FaceFree>;
using FontPtr = std::unique_ptr<hb_font_t, FontFree>;

// One font file and what is measured most: the advances of Latin text, ready in a table.
struct LoadedFace {
  static constexpr char32_t table_end = 0x250;  // Basic Latin to Latin Extended-B

  std::string bytes;  // the blob looks into it
  FacePtr face;
  FontPtr font;
  FaceMetrics metrics{};
  std::array<short, table_end> table{};

  int advance(char32_t c) const;  // thousandths of the em
};

struct Typefaces::Impl {
  std::array<LoadedFace, face_count> faces;
  const LoadedFace& operator[](Face f) const { return faces[static_cast<size_t>(f)]; }
};

}  // namespace loamsheet
