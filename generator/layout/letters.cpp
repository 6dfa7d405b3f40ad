#include "layout/letters.h"

#include <array>

#include "base/code_points.h"
#include "base/text.h"

namespace loamsheet {
namespace {

std::string named(char32_t c) {
  static constexpr char digits[] = "0123456789ABCDEF";
  std::string name = "'";
  name += visible(utf8(c)) + "' (U+";
  for (int shift = c > 0xFFFF ? 20 : 12; shift >= 0; shift -= 4) name += digits[(c >> shift) & 0xF];
  return name + ")";
}

}  // namespace

void check_letters(const Pages& pages, const Typefaces& type, Sink& sink) {
  std::array<CodePoints, face_count> seen;
  for (const Page& page : pages.pages) {
    for (const PageMark& mark : page.marks) {
      const auto* text = std::get_if<TextMark>(&mark);
      if (!text) continue;
      for (char32_t c : decoded(text->text)) {
        const bool is_new = seen[static_cast<size_t>(text->face)].add(c);
        if (!is_new || type.has_glyph(text->face, c)) continue;
        Diagnostic d;
        d.message =
            "the sheet's typeface has no letter " + named(c) + ", in \"" + text->text + "\"";
        d.expected = "letters of the Latin, Greek or Cyrillic script";
        sink.add(std::move(d));
      }
    }
  }
}

}  // namespace loamsheet
