// Pass 2: the calendar. A week is one band, as high as its fullest day; the weekdays are repeated
// on every page. Only a week that alone is nearly a page high is divided.
#include <algorithm>
#include <deque>

#include "layout/table.h"

namespace loamsheet {
namespace {

using Cell = CalendarGrid::Cell;
using Week = CalendarGrid::Week;

// A line of a day, and the space above it.
struct Entry {
  Line line;
  const TextStyle* style;
  double above;
};
using Stack = std::deque<Entry>;

class CalendarFormer {
 public:
  CalendarFormer(const CalendarGrid& block, Former& former, Flow& flow)
      : block_(block),
        former_(former),
        flow_(flow),
        text_(former.text("calendar")),
        day_(former.text("calendar-day")),
        pad_(former.space("calendar.pad")),
        cell_(former.width / static_cast<double>(block.weekdays.size())),
        tag_(former.tag("Table", former.section)) {}

  void form() {
    head();
    for (const Week& week : block_.weeks) set(week);
  }

 private:
  double left(size_t column) const { return cell_ * static_cast<double>(column); }
  double inside() const { return cell_ - 2 * pad_; }

  void line(Point from, Point to, const std::string& name, Band& band) const {
    const auto& style = former_.style;
    const double grey = style.has(name + "-grey") ? style[name + "-grey"] : 0;
    band.marks.emplace_back(rule(from, to, style[name], grey));
  }

  void head() {
    Grid grid;
    Cells titles;
    std::vector<int> tags;
    const int tr = former_.tag("TR", tag_);
    for (size_t c = 0; c < block_.weekdays.size(); ++c) {
      grid.columns.push_back({left(c) + pad_, inside(), false});
      titles.push_back(in_face(block_.weekdays[c], Face::bold));
      tags.push_back(former_.tag("TH", tr));
      former_.tags.back().scope = "Column";
    }
    const TextStyle style = former_.text("calendar-head");
    const RowLines lines = row_lines(titles, style, grid, former_);
    Band band;
    band.height = pad_ + style.leading * static_cast<double>(lines.count());
    set_row({lines, 0, lines.count()}, style, grid, tags, -pad_ / 2, band);
    line({0, -band.height}, {former_.width, -band.height}, "calendar.edge", band);
    flow_.heads.push_back(band);
    flow_.bands.push_back(std::move(band));
  }

  void stack_up(const Words& words, const TextStyle& style, double above, Stack& stack) const {
    for (Line& l : former_.lines(words, style, inside())) {
      stack.push_back({std::move(l), &style, stack.empty() ? 0 : above});
      above = 0;
    }
  }

  Stack stack_of(const Cell& cell) const {
    Stack stack;
    stack_up(in_face(cell.day, Face::bold), day_, 0, stack);
    double above = former_.space("calendar.day-gap");
    for (const Words& words : cell.lines) {
      stack_up(words, text_, above, stack);
      above = former_.space("calendar.item-gap");
    }
    return stack;
  }

  void set(const Week& week) {
    std::vector<Stack> stacks;
    std::vector<int> tags;
    const size_t first = flow_.bands.size();
    if (!week.every_day.empty()) flow_.bands.push_back(strip(week.every_day));
    const size_t days = flow_.bands.size();
    const int tr = former_.tag("TR", tag_);
    for (const Cell& cell : week.days) {
      stacks.push_back(stack_of(cell));
      tags.push_back(former_.tag("TD", tr));
    }
    do {
      flow_.bands.push_back(part(week, stacks, tags));
    } while (std::any_of(stacks.begin(), stacks.end(), [](const Stack& s) { return !s.empty(); }));
    if (days > first) flow_.bands[days].keep = Keep::must;
    if (&week == &block_.weeks.front()) flow_.bands[first].keep = Keep::must;
  }

  // What holds for all days of a week, in a row of its own over them.
  Band strip(const Words& words) const {
    const int tag = former_.tag("TD", former_.tag("TR", tag_));
    former_.tags.back().columns = static_cast<int>(block_.weekdays.size());
    Band band;
    band.head = static_cast<int>(flow_.heads.size()) - 1;
    double used = pad_;
    for (const Line& l : former_.lines(words, text_, former_.width - 2 * pad_)) {
      set_line(l, text_, {pad_, -used, tag}, band.marks);
      used += text_.leading;
    }
    band.height = used;
    for (const double x : {0.0, former_.width}) {
      line({x, 0}, {x, -band.height}, "calendar.rule", band);
    }
    return band;
  }

  // What of a day's lines has room; it leaves the stack. Gives the height.
  double take(Stack& stack, Spot spot, std::vector<PageMark>& marks) const {
    const double room = former_.tallest() - flow_.heads.back().height - 2 * pad_;
    double used = 0;
    while (!stack.empty()) {
      const Entry& next = stack.front();
      const double above = used > 0 ? next.above : 0;
      if (used > 0 && used + above + next.style->leading > room) break;
      set_line(next.line, *next.style, {spot.x, spot.top - used - above, spot.tag}, marks);
      used += above + next.style->leading;
      stack.pop_front();
    }
    return used;
  }

  Band part(const Week& week, std::vector<Stack>& stacks, const std::vector<int>& tags) const {
    std::vector<PageMark> words;
    std::vector<double> used;
    Band band;
    band.head = static_cast<int>(flow_.heads.size()) - 1;
    band.height = std::min(former_.space("calendar.least"), former_.tallest());
    for (size_t c = 0; c < week.days.size(); ++c) {
      used.push_back(take(stacks[c], {left(c) + pad_, -pad_, tags[c]}, words));
      band.height = std::max(band.height, used.back() + 2 * pad_);
    }
    for (size_t c = 0; c < week.days.size(); ++c) shade(week.days[c], c, used[c], band);
    rules(band);
    for (size_t c = 0; c < week.days.size(); ++c) {
      if (week.days[c].milestone) frame(c, band);
    }
    band.marks.insert(band.marks.end(), words.begin(), words.end());
    return band;
  }

  void shade(const Cell& cell, size_t c, double used, Band& band) const {
    if (cell.state == CalendarGrid::State::open) return;
    Box box{left(c), -band.height, left(c) + cell_, 0};
    if (cell.state == CalendarGrid::State::outside) {
      box.top = used > 0 ? -used - pad_ : 0;
      return hatch(box, band);
    }
    box.top -= former_.style["calendar.rule"] / 2;  // the rule above is drawn already
    BoxMark grey;
    grey.box = box;
    grey.fill = former_.style["calendar.closed-fill"];
    band.marks.emplace_back(grey);
  }

  // Oblique lines, cut to the box.
  void hatch(const Box& box, Band& band) const {
    const double pitch = former_.space("calendar.hatch-pitch"), high = box.height();
    for (double x = box.left - high + pitch; x < box.right; x += pitch) {
      const double from = std::max(x, box.left), to = std::min(x + high, box.right);
      line({from, box.bottom + from - x}, {to, box.bottom + to - x}, "calendar.hatch", band);
    }
  }

  void rules(Band& band) const {
    for (size_t c = 0; c <= block_.weekdays.size(); ++c) {
      line({left(c), 0}, {left(c), -band.height}, "calendar.rule", band);
    }
    line({0, -band.height}, {former_.width, -band.height}, "calendar.rule", band);
  }

  void frame(size_t c, Band& band) const {
    BoxMark heavy;
    heavy.stroke = 0;
    heavy.stroke_width = former_.style["calendar.milestone"];
    const double in = heavy.stroke_width / 2;
    heavy.box = {left(c) + in, in - band.height, left(c) + cell_ - in, -in};
    band.marks.emplace_back(heavy);
  }

  const CalendarGrid& block_;
  Former& former_;
  Flow& flow_;
  TextStyle text_, day_;
  double pad_, cell_;
  int tag_;
};

bool is_regular(const CalendarGrid& block) {
  return std::all_of(block.weeks.begin(), block.weeks.end(),
                     [&](const Week& w) { return w.days.size() == block.weekdays.size(); });
}

}  // namespace

void form_block(const CalendarGrid& block, Former& former, Flow& flow) {
  if (block.weekdays.empty()) return former.fault("a calendar has no weekdays");
  if (!is_regular(block)) return former.fault("a week has not as many days as the calendar");
  CalendarFormer(block, former, flow).form();
}

}  // namespace loamsheet
