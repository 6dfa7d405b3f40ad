// Pass 2: facts as a grid of cells: label, value and note under a thin rule. Values stand on one
// base line across a row, and so do notes.
#include <algorithm>

#include "layout/form.h"

namespace loamsheet {
namespace {

size_t rows_of(size_t facts, size_t columns) {
  return (facts + columns - 1) / columns;
}

// As many columns as asked for, unless they would be narrower than is good to read; and one less
// where that takes no more rows, so that four stand two by two.
size_t columns_for(const Facts& facts, const Former& former) {
  const double gutter = former.space("facts.gutter"), least = former.space("facts.least");
  const int room = static_cast<int>((former.width + gutter) / (least + gutter));
  const size_t most = static_cast<size_t>(std::max(1, std::min(facts.columns, room)));
  const size_t count = facts.facts.size();
  const bool even = most > 1 && count > most && count % (most - 1) == 0 &&
                    rows_of(count, most - 1) == rows_of(count, most);
  return even ? most - 1 : most;
}

class FactGrid {
 public:
  FactGrid(const Facts& facts, size_t columns, Former& former)
      : facts_(facts),
        former_(former),
        columns_(columns),
        label_(former.text("fact-label")),
        value_(former.text("fact-value")),
        note_(former.text("fact-note")),
        pitch_((former.width + former.space("facts.gutter")) / static_cast<double>(columns)),
        cell_(pitch_ - former.space("facts.gutter")),
        list_(former.tag("L", former.section)) {}

  Band row(size_t from) const {
    const size_t to = std::min(facts_.facts.size(), from + columns_);
    std::vector<Cell> cells;
    for (size_t i = from; i < to; ++i) cells.push_back(cell(facts_.facts[i]));
    Band band;
    const Heights h = heights(cells);
    const double pad = former_.space("facts.pad");
    for (size_t i = 0; i < cells.size(); ++i) {
      set(cells[i], {pitch_ * static_cast<double>(i), -pad}, h, band);
    }
    band.height = pad + h.label + h.value + h.note + former_.space("facts.below");
    return band;
  }

 private:
  struct Cell {
    std::vector<Line> label, value, note;
  };
  struct Heights {
    double label = 0, value = 0, note = 0;
  };

  static double height(const std::vector<Line>& lines, const TextStyle& style) {
    return style.leading * static_cast<double>(lines.size());
  }

  Cell cell(const Facts::Fact& fact) const {
    return {former_.lines({{fact.label, Face::regular}}, label_, cell_),
            former_.lines(fact.value, value_, cell_),
            former_.lines({{fact.note, Face::regular}}, note_, cell_)};
  }

  Heights heights(const std::vector<Cell>& cells) const {
    Heights h;
    for (const Cell& c : cells) {
      h.label = std::max(h.label, height(c.label, label_));
      h.value = std::max(h.value, height(c.value, value_));
      h.note = std::max(h.note, height(c.note, note_));
    }
    return h;
  }

  static void set_lines(const std::vector<Line>& lines, const TextStyle& style, Spot spot,
                        Band& band) {
    for (const Line& line : lines) {
      set_line(line, style, spot, band.marks);
      spot.top -= style.leading;
    }
  }

  // `at`: the upper left corner of the text.
  void set(const Cell& c, Point at, const Heights& h, Band& band) const {
    band.marks.emplace_back(rule({at.x, 0}, {at.x + cell_, 0}, former_.style["facts.rule"],
                                 former_.style["facts.rule-grey"]));
    const int item = former_.tag("LI", list_);
    const int label = former_.tag("Lbl", item), body = former_.tag("LBody", item);
    const double value_top = at.y - h.label;
    set_lines(c.label, label_, {at.x, at.y, label}, band);
    set_lines(c.value, value_, {at.x, value_top, body}, band);
    set_lines(c.note, note_, {at.x, value_top - h.value, body}, band);
  }

  const Facts& facts_;
  Former& former_;
  size_t columns_;
  TextStyle label_, value_, note_;
  double pitch_, cell_;  // from cell to cell, and the width of one
  int list_;
};

}  // namespace

void form_block(const Facts& facts, Former& former, Flow& flow) {
  if (facts.facts.empty()) return;
  if (facts.columns < 1) return former.fault("facts are to be set in no column at all");
  const size_t step = columns_for(facts, former);
  const FactGrid grid(facts, step, former);
  for (size_t from = 0; from < facts.facts.size(); from += step) {
    flow.bands.push_back(grid.row(from));
    const bool beside_an_end = from == step || (from > 0 && from + step >= facts.facts.size());
    if (beside_an_end) flow.bands.back().keep = Keep::wish;
  }
}

}  // namespace loamsheet
