// cut: a font file with no more than the glyphs in use. libharu writes what it is given nearly
// whole, so a cut font makes its work and the sheet smaller.
#include <hb-subset.h>

#include "type/faces.h"
#include "type/letter_table.h"

namespace loamsheet {
namespace {

struct InputFree {
  void operator()(hb_subset_input_t* i) const { hb_subset_input_destroy(i); }
};
using InputPtr = std::unique_ptr<hb_subset_input_t, InputFree>;

// Layout rules are not used (text is set without kerning and ligatures), a signature would not
// hold for the cut file, and instructions for the screen cost more bytes than they show on paper.
void leave_out(hb_subset_input_t* input) {
  hb_set_t* drop = hb_subset_input_set(input, HB_SUBSET_SETS_DROP_TABLE_TAG);
  for (hb_tag_t tag :
       {HB_TAG('G', 'S', 'U', 'B'), HB_TAG('G', 'P', 'O', 'S'), HB_TAG('G', 'D', 'E', 'F'),
        HB_TAG('k', 'e', 'r', 'n'), HB_TAG('D', 'S', 'I', 'G')}) {
    hb_set_add(drop, tag);
  }
  hb_subset_input_set_flags(input, HB_SUBSET_FLAGS_NO_HINTING | HB_SUBSET_FLAGS_NOTDEF_OUTLINE);
}

InputPtr input_for(const std::set<char32_t>& letters) {
  InputPtr input(hb_subset_input_create_or_fail());
  if (!input) return input;
  hb_set_t* keep = hb_subset_input_unicode_set(input.get());
  for (char32_t c : letters) hb_set_add(keep, c);
  leave_out(input.get());
  return input;
}

void replace_letters(hb_face_t* cut, const std::set<char32_t>& letters) {
  const FontPtr font(hb_font_create(cut));
  const std::string table = letter_table(font.get(), letters);
  const BlobPtr blob(hb_blob_create(table.data(), static_cast<unsigned>(table.size()),
                                    HB_MEMORY_MODE_DUPLICATE, nullptr, nullptr));
  hb_face_builder_add_table(cut, HB_TAG('c', 'm', 'a', 'p'), blob.get());
}

}  // namespace

Outcome<std::string> Typefaces::cut(Face face, const std::set<char32_t>& used) const {
  std::set<char32_t> letters = used;
  letters.insert(U' ');
  const InputPtr input = input_for(letters);
  const FacePtr small(input ? hb_subset_or_fail((*impl_)[face].face.get(), input.get()) : nullptr);
  if (!small) {
    Diagnostic d;
    d.message = "a font could not be cut to the glyphs in use";
    d.fault = Fault::internal;
    return failure<std::string>(std::move(d));
  }
  replace_letters(small.get(), letters);
  const BlobPtr blob(hb_face_reference_blob(small.get()));
  unsigned length = 0;
  const char* data = hb_blob_get_data(blob.get(), &length);
  return {std::string(data, length), {}};
}

}  // namespace loamsheet
