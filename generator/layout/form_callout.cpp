// Pass 2: boxed notices. The weight of the frame carries the meaning, so that it survives a grey
// printer: a heavy double frame for not cleared, a dashed one for provisional, a thin one for
// cleared, a bar on a tint for the rest.
#include <algorithm>
#include <utility>

#include "layout/form.h"

namespace loamsheet {
namespace {

const char* kind_name(Callout::Kind kind) {
  switch (kind) {
    case Callout::Kind::cleared:
      return "callout-cleared";
    case Callout::Kind::provisional:
      return "callout-provisional";
    case Callout::Kind::not_cleared:
      return "callout-not-cleared";
    case Callout::Kind::caution:
      return "callout-caution";
    case Callout::Kind::note:
      break;
  }
  return "callout-note";
}

bool is_status(Callout::Kind kind) {
  return kind != Callout::Kind::caution && kind != Callout::Kind::note;
}

// One line of text to come, with the space above it.
struct Entry {
  Line line;
  TextStyle style;
  int tag;
  double above;
};

class Frame {
 public:
  Frame(const Callout& callout, const Former& former)
      : former_(former), name_(kind_name(callout.kind)) {}

  double bar() const { return former_.style[name_ + ".bar"]; }

  // From the band's edge to its text.
  double inset() const {
    return former_.space("callout.pad") + former_.style[name_ + ".frame"] +
           (former_.style[name_ + ".inner"] > 0 ? former_.space("callout.inner-gap") : 0);
  }

  // Everything but the text, behind it.
  void draw(Band& band) const {
    const Box all{0, -band.height, former_.width, 0};
    const double fill = former_.style[name_ + ".fill"];
    if (fill < 1) band.marks.emplace_back(BoxMark{all, fill, -1, 0});
    edge(all, former_.style[name_ + ".frame"], 0, band);
    edge(all, former_.style[name_ + ".inner"], former_.space("callout.inner-gap"), band);
    const double bar = former_.style[name_ + ".bar"];
    if (bar > 0) band.marks.emplace_back(BoxMark{{0, -band.height, bar, 0}, 0, -1, 0});
  }

 private:
  // A frame whose outer edge lies `in` inside the box.
  void edge(const Box& all, double thickness, double in, Band& band) const {
    if (thickness <= 0) return;
    const double d = in + thickness / 2;
    const Box box{all.left + d + (in > 0 ? bar() : 0), all.bottom + d, all.right - d, all.top - d};
    const double dash = former_.style[name_ + ".dash"];
    if (dash <= 0) {
      band.marks.emplace_back(BoxMark{box, -1, 0, thickness});
      return;
    }
    const Point corners[] = {
        {box.left, box.bottom}, {box.right, box.bottom}, {box.right, box.top}, {box.left, box.top}};
    for (int i = 0; i < 4; ++i) {
      RuleMark side = rule(corners[i], corners[(i + 1) % 4], thickness);
      side.dashes = {dash, dash * 0.6};
      band.marks.push_back(std::move(side));
    }
  }

  const Former& former_;
  std::string name_;
};

std::vector<Entry> entries(const Callout& callout, Former& former, double width) {
  std::vector<Entry> all;
  const int box = former.tag("Sect", former.section);
  const double measure = std::min(width, former.measure());
  auto add = [&](const Words& words, const TextStyle& style, double above) {
    const int tag = former.tag("P", box);
    for (Line& line : former.lines(words, style, measure)) {
      all.push_back({std::move(line), style, tag, std::exchange(above, 0)});
    }
  };
  if (!callout.title.empty()) {
    add(in_face(callout.title, Face::bold),
        former.text(is_status(callout.kind) ? "status-title" : "callout-title"), 0);
  }
  const TextStyle body = former.text("body");
  for (const Words& words : callout.lines) add(words, body, former.space("callout.line-gap"));
  return all;
}

double height(const Entry& e) {
  return e.above + e.style.leading;
}

}  // namespace

// A notice stays whole; only one higher than `tallest` goes on in a further box.
void form_block(const Callout& callout, Former& former, Flow& flow) {
  const Frame frame(callout, former);
  const double inset = frame.inset(), left = inset + frame.bar();
  const auto all = entries(callout, former, former.width - left - inset);
  const double tallest = former.tallest() - 2 * inset;
  for (size_t from = 0, to = 0; from < all.size(); from = to) {
    double text = 0;
    while (to < all.size() && (to == from || text + height(all[to]) <= tallest)) {
      text += height(all[to++]);
    }
    Band band;
    band.height = text + 2 * inset;
    frame.draw(band);
    double top = -inset;
    for (size_t i = from; i < to; ++i) {
      top -= all[i].above;
      set_line(all[i].line, all[i].style, {left, top, all[i].tag}, band.marks);
      top -= all[i].style.leading;
    }
    if (from > 0) band.space = former.space("callout.above");
    flow.bands.push_back(std::move(band));
  }
}

}  // namespace loamsheet
