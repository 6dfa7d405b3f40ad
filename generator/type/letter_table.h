// letter_table: which glyph shows which letter, as the table `cmap` of a font file.
#pragma once
#include <hb.h>

#include <set>
#include <string>

namespace loamsheet {

// Format 4 (OpenType 1.9, chapter cmap) in as few segments as keep it small: for every one of the
// 65 536 code points libharu walks through all segments before it. Letters beyond U+FFFF are left
// out; neither the format nor libharu knows them.
std::string letter_table(hb_font_t*, const std::set<char32_t>& letters);

}  // namespace loamsheet
