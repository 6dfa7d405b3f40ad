// The passes in order: measure (within form), form, paginate, place, furnish, then a look at
// every letter.
#include "layout/layout.h"

#include <cmath>
#include <utility>

#include "layout/form.h"
#include "layout/furnish.h"
#include "layout/letters.h"
#include "layout/paginate.h"
#include "layout/place.h"

namespace loamsheet {
namespace {

struct Size {
  double width, height;  // mm
};
constexpr Size a4{210, 297};          // ISO 216
constexpr Size letter{215.9, 279.4};  // ANSI Y14.1 size A: 8.5 in by 11 in

Paper paper_for(const Sheet& sheet, bool landscape, const PageStyle& style) {
  Size size = sheet.letter ? letter : a4;
  if (landscape) std::swap(size.width, size.height);
  auto hundredths = [](double v) { return std::round(v * 100) / 100; };
  Paper paper{hundredths(points(size.width)), hundredths(points(size.height)), {}};
  paper.body = {hundredths(points(style["page.left"])), hundredths(points(style["page.bottom"])),
                hundredths(paper.width - points(style["page.right"])),
                hundredths(paper.height - points(style["page.top"]))};
  return paper;
}

}  // namespace

Outcome<Pages> lay_out(const Sheet& sheet, const Figures& figures, const Typefaces& type,
                       const PageStyle& style) {
  Sink sink;
  Pages pages{sheet.title, sheet.author, sheet.subject, sheet.language, {}, {}, {}};
  pages.tags.push_back({"Document", -1, "", ""});
  for (const Part& part : sheet.parts) {
    const Paper paper = paper_for(sheet, part.landscape, style);
    Former former{type, style, figures, paper.body.width(), paper.body.height(), pages.tags, sink};
    former.section = former.tag("Sect", 0);
    const Flow flow = form(part, former);
    place(flow, paginate(flow, paper.body.height(), sink), paper, pages);
  }
  furnish(sheet, type, style, pages);
  check_letters(pages, type, sink);
  if (sink.failed()) return {std::nullopt, sink.take()};
  return {std::move(pages), sink.take()};
}

}  // namespace loamsheet
