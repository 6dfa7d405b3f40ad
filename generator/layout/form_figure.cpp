// Pass 2: a figure in its own size, centred, with its caption below. Never scaled.
#include "layout/form.h"

namespace loamsheet {
namespace {

void set_caption(const std::vector<Line>& lines, const TextStyle& style, const Former& former,
                 int tag, Band& band) {
  for (const Line& line : lines) {
    const double x = (former.width - line.width) / 2;
    set_line(line, style, {x, -band.height, tag}, band.marks);
    band.height += style.leading;
  }
}

}  // namespace

void form_block(const FigureBlock& block, Former& former, Flow& flow) {
  const Figure* figure = former.figures.find(block.id);
  if (!figure) return former.fault("there is no figure '" + block.id + "'");
  const double width = points(figure->width), height = points(figure->height);
  if (width > former.width) {
    return former.fault("the figure '" + block.id + "' is wider than the text");
  }
  const int tag = former.tag("Figure", former.section);
  former.tags[static_cast<size_t>(tag)].alt = block.alt;
  Band band;
  const double left = (former.width - width) / 2;
  band.marks.emplace_back(FigureMark{block.id, {left, -height, left + width, 0}, tag});
  band.height = height;
  const TextStyle style = former.text("caption");
  const auto lines = former.lines({{block.caption, Face::regular}}, style, former.measure());
  if (!lines.empty()) {
    band.height += former.space("figure.caption-gap");
    set_caption(lines, style, former, former.tag("Caption", tag), band);
  }
  flow.bands.push_back(std::move(band));
}

}  // namespace loamsheet
