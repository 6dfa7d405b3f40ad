// Pass 2: steps in their order: a box to tick, the number, the words, the minutes flush right,
// and a thin rule between two steps.
#include <algorithm>
#include <iterator>

#include "layout/form.h"

namespace loamsheet {
namespace {

constexpr double least_share = 0.4;  // of the measure that must be left for the words

// Right ends and left ends of what stands in a line.
struct Places {
  double number_right = 0, words_left = 0, words_width = 0, right = 0;
};

double widest(const Steps& block, std::string Steps::Step::*text, Face face, double size,
              const Former& former) {
  double width = 0;
  for (const auto& step : block.steps) {
    width = std::max(width, former.type.width(face, size, step.*text));
  }
  return width;
}

Places places_for(const Steps& block, double size, const Former& former) {
  const double gap = former.space("steps.gap");
  const double minutes = widest(block, &Steps::Step::minutes, Face::regular, size, former);
  Places p;
  p.right = former.measure();
  p.number_right =
      former.space("tick.indent") + widest(block, &Steps::Step::number, Face::bold, size, former);
  p.words_left = p.number_right + gap;
  p.words_width = p.right - p.words_left - (minutes > 0 ? minutes + gap : 0);
  return p;
}

class StepsFormer {
 public:
  StepsFormer(const Places& places, Former& former, Flow& flow)
      : at_(places), former_(former), flow_(flow), style_(former.text("body")) {}

  void form(const Steps& block) {
    const int list = former_.tag("L", former_.section);
    for (const auto& step : block.steps) {
      if (&step != &block.steps.front()) part_from_last();
      set(step, former_.tag("LI", list));
    }
  }

 private:
  // A rule below the step before.
  void part_from_last() {
    const auto& style = former_.style;
    Band& last = flow_.bands.back();
    last.height += former_.space("steps.above");
    last.marks.emplace_back(rule({0, -last.height}, {at_.right, -last.height}, style["steps.rule"],
                                 style["steps.rule-grey"]));
    above_ = former_.space("steps.above");
  }

  void set_beside(const std::string& text, Face face, Spot right_end, Band& band) const {
    if (text.empty()) return;
    const double width = former_.type.width(face, style_.size, text);
    right_end.x -= width;
    set_line({{{text, face, 0, width}}, width}, style_, right_end, band.marks);
  }

  void set(const Steps::Step& step, int item) {
    const int label = former_.tag("Lbl", item), body = former_.tag("LBody", item);
    auto lines = former_.lines(step.words, style_, at_.words_width);
    if (lines.empty()) lines.emplace_back();
    auto bands = line_bands(lines, style_, at_.words_left, body);
    Band& first = bands.front();
    first.space = above_;
    first.marks.emplace_back(tick_box(former_, style_, 0, 0));
    set_beside(step.number, Face::bold, {at_.number_right, 0, label}, first);
    set_beside(step.minutes, Face::regular, {at_.right, 0, body}, first);
    std::move(bands.begin(), bands.end(), std::back_inserter(flow_.bands));
  }

  const Places at_;
  Former& former_;
  Flow& flow_;
  TextStyle style_;
  double above_ = 0;
};

}  // namespace

void form_block(const Steps& block, Former& former, Flow& flow) {
  if (block.steps.empty()) return;
  const Places places = places_for(block, former.text("body").size, former);
  if (places.words_width < least_share * former.measure()) {
    return former.fault("the numbers and minutes of steps leave no room for their words");
  }
  StepsFormer(places, former, flow).form(block);
}

}  // namespace loamsheet
