// How much room the first page leaves for the elevation: the page is set with a figure of next to
// no height, and what stays free below it is measured.
#include <algorithm>

#include "compose/compose.h"
#include "job/job.h"
#include "layout/layout.h"

namespace loamsheet {
namespace {

constexpr double blank_height = 1, least = 60;  // mm; the least goes on a page of its own

constexpr double millimetres(double points) {
  return points * 25.4 / 72;
}

Figures blank_elevation(const Wording& wording) {
  Figure blank;
  blank.id = "elevation";
  blank.title = wording.say("figure.title", {{"scale", 10}});
  blank.width = blank.height = blank_height;
  return {{std::move(blank)}};
}

const FigureMark* figure_on(const Page& page) {
  for (const PageMark& mark : page.marks) {
    if (const auto* figure = std::get_if<FigureMark>(&mark)) return figure;
  }
  return nullptr;
}

double free_below(const Page& page, const PageStyle& style) {
  const FigureMark* figure = figure_on(page);
  if (!figure) return 0;
  const double caption = millimetres(style["caption.leading"]) + style["figure.caption-gap"];
  return millimetres(figure->box.top - page.body.bottom) - caption;
}

}  // namespace

Outcome<FigureInput> figure_input(const Planned& p, const Typefaces& type, const PageStyle& style) {
  Sink sink;
  const Figures blank = blank_elevation(p.wording);
  const Sheet sheet = compose_first_page({p.build, p.plan, blank, p.wording, p.catalogue, {}});
  const auto pages = taken(lay_out(sheet, blank, type, style), sink);
  if (!pages) return {std::nullopt, sink.take()};
  const Page& first = pages->pages.front();
  const double width = millimetres(first.body.width());
  const double height = std::max(free_below(first, style), least);
  return {FigureInput{p.build, p.plan, p.wording, type, width, height}, sink.take()};
}

}  // namespace loamsheet
