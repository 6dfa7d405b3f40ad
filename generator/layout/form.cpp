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
  std::string operator()(const CalendarGrid&) const { return "calendar.above"; }
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

// A few lines that lead up to a table, a list or a figure had better stand on the same page.
bool introduces(const Block& before, const Block& after, size_t lines) {
  return std::holds_alternative<Paragraph>(before) && lines <= 3 &&
         !std::holds_alternative<Heading>(after) && !std::holds_alternative<Paragraph>(after);
}

Keep keep_between(const Block& before, const Block& after, size_t lines) {
  if (std::holds_alternative<Heading>(before)) return Keep::must;
  return introduces(before, after, lines) ? Keep::wish : Keep::free;
}

// The height of the headings at the end of the flow, once `block` was formed from band `first`.
double lead_after(const Block& block, size_t first, const Flow& flow, const Former& former) {
  const auto* heading = std::get_if<Heading>(&block);
  if (!heading) return 0;
  double lead = former.lead + former.space(heading_style(*heading) + ".below");
  for (size_t i = first; i < flow.bands.size(); ++i) {
    lead += flow.bands[i].space + flow.bands[i].height;
  }
  return lead;
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
  x += former.style["tick.stroke"] / 2;
  box.box = {x, middle - side / 2, x + side, middle + side / 2};
  box.stroke = former.style["tick.grey"];
  box.stroke_width = former.style["tick.stroke"];
  return box;
}

Flow form(const Part& part, Former& former) {
  Flow flow;
  const Block* before = nullptr;
  size_t start = 0;  // of the block before
  for (const Block& block : part.blocks) {
    const size_t first = flow.bands.size();
    std::visit([&](const auto& b) { form_block(b, former, flow); }, block);
    if (flow.bands.size() == first) continue;
    if (before) {
      flow.bands[first].space = space_between(*before, block, former);
      flow.bands[first].keep = keep_between(*before, block, first - start);
    }
    former.lead = lead_after(block, first, flow, former);
    before = &block;
    start = first;
  }
  if (!flow.bands.empty()) flow.anchors.insert(flow.anchors.begin(), {part.title, 1, 0});
  return flow;
}

}  // namespace loamsheet
