// The passes in order: measure (within form), form, paginate, place, furnish, then a look at
// every letter.
#include "layout/layout.h"

#include <cmath>
#include <utility>

#include "base/paper.h"
#include "catalogue/lacking.h"
#include "layout/form.h"
#include "layout/furnish.h"
#include "layout/letters.h"
#include "layout/paginate.h"
#include "layout/place.h"

namespace loamsheet {
namespace {

Paper paper_for(const Sheet& sheet, bool landscape, const PageStyle& style) {
  PaperSize size = paper_named(sheet.paper);
  if (landscape) std::swap(size.width, size.height);
  auto hundredths = [](double v) { return std::round(v * 100) / 100; };
  Paper paper{hundredths(points(size.width)), hundredths(points(size.height)), {}};
  paper.body = {hundredths(points(style["page.left"])), hundredths(points(style["page.bottom"])),
                hundredths(paper.width - points(style["page.right"])),
                hundredths(paper.height - points(style["page.top"]))};
  return paper;
}

Diagnostic internal(std::string message) {
  Diagnostic d;
  d.message = std::move(message);
  d.fault = Fault::internal;
  return d;
}

struct Setting {
  const Figures& figures;
  const Typefaces& type;
  const PageStyle& style;
};

Pages run_passes(const Sheet& sheet, const Setting& in, Sink& sink) {
  Pages pages{sheet.title, sheet.author, sheet.subject, sheet.language, {}, {}, {}};
  pages.tags.push_back({"Document", -1, "", ""});
  for (const Part& part : sheet.parts) {
    const Paper paper = paper_for(sheet, part.landscape, in.style);
    Former former{in.type,    in.style, in.figures, paper.body.width(), paper.body.height(),
                  pages.tags, sink};
    former.section = former.tag("Sect", 0);
    const Flow flow = form(part, former);
    place(flow, paginate(flow, paper.body.height(), sink), paper, pages);
  }
  furnish(sheet, in.type, in.style, pages);
  check_letters(pages, in.type, sink);
  return pages;
}

}  // namespace

Outcome<Pages> lay_out(const Sheet& sheet, const Figures& figures, const Typefaces& type,
                       const PageStyle& style) try {
  Sink sink;
  Pages pages = run_passes(sheet, {figures, type, style}, sink);
  if (pages.pages.empty() && !sink.failed()) sink.add(internal("the sheet has nothing to print"));
  if (sink.failed()) return {std::nullopt, sink.take()};
  return {std::move(pages), sink.take()};
} catch (const Lacking& lacking) {  // a measure that the style does not have
  return failure<Pages>(lacking.why);
}

}  // namespace loamsheet
