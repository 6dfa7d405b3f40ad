// Pass 2, form: blocks into bands with inner positions, and their structure elements.
#pragma once
#include <algorithm>
#include <string>
#include <vector>

#include "base/diagnostic.h"
#include "catalogue/style.h"
#include "compose/sheet.h"
#include "figure/figure.h"
#include "layout/flow.h"
#include "layout/measure.h"
#include "type/type.h"

namespace loamsheet {

constexpr double points(double millimetres) {
  return millimetres * 72 / 25.4;
}

// What forming a block needs to know, and where its elements and faults go.
struct Former {
  const Typefaces& type;
  const PageStyle& style;
  const Figures& figures;
  double width, height;  // of the text area, points
  std::vector<Tag>& tags;
  Sink& sink;
  int section = 0;  // the element that blocks belong to
  double lead = 0;  // height of the headings that a block follows

  TextStyle text(const std::string& name) const { return text_style(style, name, type); }
  double space(const std::string& name) const { return points(style[name]); }
  // Running text is set no wider than is easy to read.
  double measure() const { return std::min(width, space("page.measure")); }
  std::vector<Line> lines(const Words& words, const TextStyle& t, double measure) const {
    return break_lines(words, t.size, measure, type);
  }
  // The height that one piece of a block may take, so that it shares a page with its headings.
  double tallest() const { return std::min(height * style["page.tallest"], height - lead); }
  int tag(std::string role, int parent) const;
  void fault(std::string message) const;
};

// Where a line stands in its band, and the element it belongs to.
struct Spot {
  double x = 0, top = 0;  // top: of the line, y <= 0
  int tag = -1;
};
void set_line(const Line&, const TextStyle&, Spot, std::vector<PageMark>&);

// One band a line, two lines at least on either side of a page break.
std::vector<Band> line_bands(const std::vector<Line>&, const TextStyle&, double x, int tag);

// Levels 1 to 3 have a look of their own; deeper ones look like 3.
int heading_level(const Heading&);
std::string heading_style(const Heading&);  // "heading1"

// The blocks of a part, in order, with the spaces between them. Its title and its headings of
// level 2 become bookmarks.
Flow form(const Part&, Former&);

void form_block(const Heading&, Former&, Flow&);
void form_block(const Paragraph&, Former&, Flow&);
void form_block(const BulletList&, Former&, Flow&);
void form_block(const TickList&, Former&, Flow&);
void form_block(const Blank&, Former&, Flow&);
void form_block(const Facts&, Former&, Flow&);
void form_block(const Table&, Former&, Flow&);
void form_block(const Callout&, Former&, Flow&);
void form_block(const FigureBlock&, Former&, Flow&);
void form_block(const Steps&, Former&, Flow&);
void form_block(const CalendarGrid&, Former&, Flow&);

// A box to tick: upper edge aligned to the capitals of the line whose top is at `top`.
BoxMark tick_box(const Former&, const TextStyle&, double x, double top);

// A straight line within a band.
RuleMark rule(Point from, Point to, double width, double grey = 0);

}  // namespace loamsheet
