#include "layout/form.h"

#include <algorithm>
#include <cmath>

namespace loamsheet {
namespace {

// The name of the measure that says how much space stands above a block.
struct SpaceAbove {
  std::string operator()(const Heading& h) const { return heading_style(h) + ".above"; }
  std::string operator()(const Facts&) const { return "facts.above"; }
  std::string operator()(const Table&) const { return "table.above"; }
  std::string operator()(const Callout&) const { return "callout.above"; }
  std::string operator()(const FigureBlock&) const { return "figure.above"; }
  std::string operator()(const Blank&) const { return "blank.above"; }
  template <class Other>
  std::string operator()(const Other&) const {
    return "block.above";
  }
};

double space_between(const Block& before, const Block& after, const Former& former) {
  if (auto* heading = std::get_if<Heading>(&before)) {
    return former.space(heading_style(*heading) + ".below");
  }
  return former.space(std::visit(SpaceAbove{}, after));
}

}  // namespace

int heading_level(const Heading& heading) {
  return std::clamp(heading.level, 1, 3);
}

std::string heading_style(const Heading& heading) {
  return std::string("heading") += static_cast<char>('0' + heading_level(heading));
}

int Former::tag(std::string role, int parent) const {
  tags.push_back({std::move(role), parent, "", ""});
  return static_cast<int>(tags.size()) - 1;
}

void Former::fault(std::string message) const {
  Diagnostic d;
  d.message = std::move(message);
  d.fault = Fault::internal;
  sink.add(std::move(d));
}

void set_line(const Line& line, const TextStyle& style, Spot spot, std::vector<PageMark>& marks) {
  for (const Piece& piece : line.pieces) {
    TextMark mark;
    mark.text = piece.text;
    mark.at = {spot.x + piece.x, spot.top - style.drop};
    mark.size = style.size;
    mark.width = piece.width;
    mark.face = piece.face;
    mark.grey = style.grey;
    mark.tag = spot.tag;
    marks.push_back(std::move(mark));
  }
}

std::vector<Band> line_bands(const std::vector<Line>& lines, const TextStyle& style, double x,
                             int tag) {
  std::vector<Band> bands(lines.size());
  for (size_t i = 0; i < lines.size(); ++i) {
    bands[i].height = style.leading;
    const bool beside_an_end = i == 1 || (i > 0 && i + 1 == lines.size());
    bands[i].keep = beside_an_end ? Keep::strong : Keep::free;
    set_line(lines[i], style, {x, 0, tag}, bands[i].marks);
  }
  return bands;
}

RuleMark rule(Point from, Point to, double width, double grey) {
  return {from, to, width, grey, {}};
}

BoxMark tick_box(const Former& former, const TextStyle& style, double x, double top) {
  const double side = former.space("tick.size");
  const double middle = top - style.leading / 2;
  BoxMark box;
  box.box = {x, middle - side / 2, x + side, middle + side / 2};
  box.stroke = former.style["tick.grey"];
  box.stroke_width = former.style["tick.stroke"];
  return box;
}

Flow form(const Part& part, Former& former) {
  Flow flow;
  const Block* before = nullptr;
  for (const Block& block : part.blocks) {
    const size_t first = flow.bands.size();
    std::visit([&](const auto& b) { form_block(b, former, flow); }, block);
    if (flow.bands.size() == first) continue;
    if (before) {
      flow.bands[first].space = space_between(*before, block, former);
      if (std::holds_alternative<Heading>(*before)) flow.bands[first].keep = Keep::must;
    }
    before = &block;
  }
  return flow;
}

}  // namespace loamsheet
