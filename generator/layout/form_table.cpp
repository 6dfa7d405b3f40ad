// Pass 2: tables. The head is repeated on every page; rows stay whole unless one alone is nearly
// a page high; two rows at least stand with the head, and the total with the row before it.
#include <algorithm>
#include <iterator>

#include "layout/table.h"

namespace loamsheet {
namespace {

class TableFormer {
 public:
  TableFormer(const Table& table, const Grid& grid, Former& former, Flow& flow)
      : table_(table),
        grid_(grid),
        former_(former),
        flow_(flow),
        style_(former.text("table")),
        tag_(former.tag("Table", former.section)) {}

  void form() {
    caption();
    head();
    for (size_t r = 0; r < table_.rows.size(); ++r) {
      row(r);
      line(-flow_.bands.back().height, rule_below(r), flow_.bands.back());
    }
  }

 private:
  // A rule across the table; y is its middle.
  void line(double y, const std::string& name, Band& band) const {
    const auto& style = former_.style;
    band.marks.emplace_back(rule({0, y}, {grid_.width, y}, style[name], style[name + "-grey"]));
  }

  void caption() {
    const TextStyle style = former_.text("table-caption");
    const auto lines = former_.lines(in_face(table_.caption, Face::bold), style, former_.measure());
    if (lines.empty()) return;
    auto bands = line_bands(lines, style, 0, former_.tag("Caption", tag_));
    for (size_t i = 1; i < bands.size(); ++i) bands[i].keep = Keep::must;
    bands.back().height += former_.space("table.caption-gap");
    for (const Band& band : bands) captioned_ += band.height;
    std::move(bands.begin(), bands.end(), std::back_inserter(flow_.bands));
  }

  void head() {
    Cells titles;
    for (const auto& column : table_.columns) titles.push_back(in_face(column.title, Face::bold));
    const TextStyle style = former_.text("table-head");
    const RowLines lines = row_lines(titles, style, grid_, former_);
    const double pad = former_.space("table.pad");
    Band band;
    band.height = 2 * pad + style.leading * static_cast<double>(lines.count());
    band.keep = captioned_ > 0 ? Keep::must : Keep::free;
    const int tr = former_.tag("TR", tag_);
    std::vector<int> tags;
    for (size_t c = 0; c < titles.size(); ++c) tags.push_back(header_tag(tr, "Column"));
    set_row({lines, 0, lines.count()}, style, grid_, tags, -pad, band);
    line(0, "table.edge", band);
    line(-band.height, "table.head-rule", band);
    between_columns(band);
    flow_.heads.push_back(band);
    flow_.bands.push_back(std::move(band));
  }

  int header_tag(int tr, const std::string& scope) const {
    const int tag = former_.tag("TH", tr);
    former_.tags[static_cast<size_t>(tag)].scope = scope;
    return tag;
  }

  // The first cell of a row heads it, unless it is a number.
  std::vector<int> row_tags() const {
    const int tr = former_.tag("TR", tag_);
    std::vector<int> tags;
    for (size_t c = 0; c < table_.columns.size(); ++c) {
      const bool heads = c == 0 && !table_.columns[0].numeric && table_.columns.size() > 1;
      tags.push_back(heads ? header_tag(tr, "Row") : former_.tag("TD", tr));
    }
    return tags;
  }

  void row(size_t r) {
    const bool total = table_.totals && r + 1 == table_.rows.size();
    const Cells cells = total ? bold(table_.rows[r]) : table_.rows[r];
    const RowLines lines = row_lines(cells, style_, grid_, former_);
    const auto tags = row_tags();
    const size_t count = std::max<size_t>(1, lines.count()), most = most_lines();
    for (size_t from = 0; from < count; from += most) {
      Band band = part({lines, from, std::min(count, from + most)}, tags);
      if (from == 0) begin_row(r, total, band);
      flow_.bands.push_back(std::move(band));
    }
  }

  // How many lines of a row one page takes beside the head.
  size_t most_lines() const {
    const double room =
        former_.tallest() - captioned_ - flow_.heads.back().height - 2 * former_.space("table.pad");
    return static_cast<size_t>(std::max(1.0, room / style_.leading));
  }

  Band part(const RowPart& lines, const std::vector<int>& tags) const {
    const double pad = former_.space("table.pad");
    Band band;
    const double text = style_.leading * static_cast<double>(lines.to - lines.from);
    const double room = std::min(points(table_.write_rows), former_.tallest());
    band.height = std::max(2 * pad + text, room);
    band.head = static_cast<int>(flow_.heads.size()) - 1;
    set_row(lines, style_, grid_, tags, (text - band.height) / 2, band);
    between_columns(band);
    return band;
  }

  // Where the cells are written in by hand, each needs its sides.
  void between_columns(Band& band) const {
    if (table_.write_rows <= 0) return;
    const auto& style = former_.style;
    for (size_t c = 1; c < grid_.columns.size(); ++c) {
      const double x = grid_.columns[c].left - former_.space("table.gutter") / 2;
      band.marks.emplace_back(
          rule({x, 0}, {x, -band.height}, style["table.row-rule"], style["table.row-rule-grey"]));
    }
  }

  // The table's edge below the last row, a heavier rule above a total.
  std::string rule_below(size_t r) const {
    if (r + 1 == table_.rows.size()) return "table.edge";
    const bool above_total = table_.totals && r + 2 == table_.rows.size();
    return above_total ? "table.total-rule" : "table.row-rule";
  }

  // How a row holds on to the one before it, and its box to tick.
  void begin_row(size_t r, bool total, Band& band) const {
    if (table_.tick_column && !total) {
      band.marks.emplace_back(tick_box(former_, style_, 0, -former_.space("table.pad")));
    }
    const bool beside_an_end = r == 1 || r + 1 == table_.rows.size();
    band.keep = r == 0          ? Keep::must
                : total         ? Keep::strong
                : beside_an_end ? Keep::wish
                                : Keep::free;
  }

  const Table& table_;
  const Grid& grid_;
  Former& former_;
  Flow& flow_;
  TextStyle style_;
  int tag_;
  double captioned_ = 0;  // height of the caption
};

bool is_regular(const Table& table) {
  return std::all_of(table.rows.begin(), table.rows.end(),
                     [&](const auto& row) { return row.size() == table.columns.size(); });
}

}  // namespace

void form_block(const Table& table, Former& former, Flow& flow) {
  if (table.columns.empty()) return former.fault("a table has no columns");
  if (!is_regular(table)) return former.fault("a row of a table has not as many cells as columns");
  const auto grid = fitted_grid(table, former);
  if (grid) TableFormer(table, *grid, former, flow).form();
}

}  // namespace loamsheet
