// Pass 2: headings, paragraphs, lists and blanks to write on.
#include <algorithm>
#include <iterator>

#include "layout/form.h"

namespace loamsheet {
namespace {

void append(std::vector<Band> bands, Flow& flow) {
  std::move(bands.begin(), bands.end(), std::back_inserter(flow.bands));
}

void set_bullet(Former& former, const TextStyle& style, int item, Band& first) {
  const std::string bullet = "\u2022";
  const double width = former.type.width(Face::regular, style.size, bullet);
  const Line line{{{bullet, Face::regular, 0, width}}, width};
  set_line(line, style, {former.space("bullet.from"), 0, former.tag("Lbl", item)}, first.marks);
}

// The items of a list, each with its marker before the first line: a bullet or a box to tick.
void form_list(const std::vector<Words>& items, bool to_tick, Former& former, Flow& flow) {
  if (items.empty()) return;
  const std::string name = to_tick ? "tick" : "bullet";
  const TextStyle style = former.text("body");
  const double indent = former.space(name + ".indent");
  const int list = former.tag("L", former.section);
  bool first = true;
  for (const Words& words : items) {
    const auto lines = former.lines(words, style, former.measure() - indent);
    if (lines.empty()) continue;
    const int item = former.tag("LI", list);
    Band marker;
    if (!to_tick) set_bullet(former, style, item, marker);
    if (to_tick) marker.marks.emplace_back(tick_box(former, style, 0, 0));
    auto bands = line_bands(lines, style, indent, former.tag("LBody", item));
    auto& marks = bands.front().marks;
    marks.insert(marks.begin(), marker.marks.begin(), marker.marks.end());
    if (!first) bands.front().space = former.space(name + ".above");
    first = false;
    append(std::move(bands), flow);
  }
}

}  // namespace

void form_block(const Heading& heading, Former& former, Flow& flow) {
  const int level = heading_level(heading);
  const std::string name = heading_style(heading);
  const TextStyle style = former.text(name);
  const auto lines = former.lines(in_face(heading.text, Face::bold), style, former.width);
  if (lines.empty()) return;
  const std::string role = std::string("H") += static_cast<char>('0' + level);
  auto bands = line_bands(lines, style, 0, former.tag(role, former.section));
  for (size_t i = 1; i < bands.size(); ++i) bands[i].keep = Keep::must;
  if (level == 2) flow.anchors.push_back({heading.text, level, flow.bands.size()});
  const double thickness = former.style[name + ".rule"];
  if (thickness > 0) {
    Band& last = bands.back();
    last.height += former.space(name + ".rule-gap") + thickness;
    const double y = thickness / 2 - last.height;
    last.marks.emplace_back(rule({0, y}, {former.width, y}, thickness));
  }
  append(std::move(bands), flow);
}

void form_block(const Paragraph& paragraph, Former& former, Flow& flow) {
  const TextStyle style = former.text(paragraph.small ? "small" : "body");
  const auto lines = former.lines(paragraph.words, style, former.measure());
  if (lines.empty()) return;
  append(line_bands(lines, style, 0, former.tag("P", former.section)), flow);
}

void form_block(const BulletList& list, Former& former, Flow& flow) {
  form_list(list.items, false, former, flow);
}

void form_block(const TickList& list, Former& former, Flow& flow) {
  form_list(list.items, true, former, flow);
}

// The label, then a line to write on as far as the measure goes; on a line of its own when the
// label leaves too little room beside it.
void form_block(const Blank& blank, Former& former, Flow& flow) {
  const TextStyle style = former.text("body");
  const double right = former.measure(), room = former.space("blank.least");
  const auto lines = former.lines(blank.label, style, right);
  const int tag = former.tag("P", former.section);
  Band band;
  double top = style.leading - former.space("blank.height");
  for (const Line& line : lines) {
    set_line(line, style, {0, top, tag}, band.marks);
    top -= style.leading;
  }
  if (lines.empty()) top -= style.leading;
  double left = lines.empty() ? 0 : lines.back().width + former.space("blank.gap");
  if (right - left < room) {
    left = 0;
    top -= former.space("blank.height");
  }
  const double y = top + style.leading - style.drop - former.space("blank.under");
  band.height = -top;
  band.marks.emplace_back(rule({left, y}, {right, y}, former.style["blank.stroke"]));
  flow.bands.push_back(std::move(band));
}

}  // namespace loamsheet
