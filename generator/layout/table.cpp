#include "layout/table.h"

#include <algorithm>

#include "layout/columns.h"

namespace loamsheet {
namespace {

Need widest(Need a, Need b) {
  return {std::max(a.least, b.least), std::max(a.most, b.most)};
}

// What column `c` needs: its title, and every cell. Numbers are not broken if it can be helped.
Need column_need(const Table& table, size_t c, const Former& former) {
  const auto& column = table.columns[c];
  Need n = need(in_face(column.title, Face::bold), former.text("table-head").size, former.type);
  const double size = former.text("table").size;
  for (const Cells& row : table.rows) {
    const bool total = table.totals && &row == &table.rows.back();
    Need cell = need(total ? bold(row)[c] : row[c], size, former.type);
    if (column.numeric) cell.least = cell.most;
    n = widest(n, cell);
  }
  return n;
}

bool wants_more(const std::vector<ColumnNeed>& needs, double room) {
  double most = 0;
  for (const ColumnNeed& n : needs) most += n.need.most;
  return most > room;
}

// The widest line of column `c` when it is `width` wide.
double used_width(const Table& table, size_t c, double width, const Former& former) {
  double used = 0;
  auto look = [&](const Words& words, const std::string& style) {
    for (const Line& line : former.lines(words, former.text(style), width + 0.01)) {
      used = std::max(used, line.width);
    }
  };
  look(in_face(table.columns[c].title, Face::bold), "table-head");
  for (const Cells& row : table.rows) {
    const bool total = table.totals && &row == &table.rows.back();
    look(total ? bold(row)[c] : row[c], "table");
  }
  return used;
}

// Lines seldom fill their column: what they leave may let another column stand unbroken.
std::vector<double> regiven(const Table& table, std::vector<ColumnNeed> needs,
                            const std::vector<double>& widths, const Former& former) {
  double room = 0;
  for (size_t c = 0; c < needs.size(); ++c) {
    room += widths[c];
    const double least = former.space("table.least");
    const double used = std::max(least, used_width(table, c, widths[c], former));
    needs[c].need = {used, std::max(used, needs[c].need.most)};
  }
  return regiven_widths(needs, room);
}

}  // namespace

Cells bold(const Cells& cells) {
  Cells out = cells;
  for (Words& words : out) {
    for (Run& run : words) run.face = Face::bold;
  }
  return out;
}

std::optional<Grid> fitted_grid(const Table& table, const Former& former) {
  const double gutter = former.space("table.gutter");
  const double tick = table.tick_column ? former.space("table.tick") : 0;
  std::vector<ColumnNeed> needs;
  for (size_t c = 0; c < table.columns.size(); ++c) {
    needs.push_back({column_need(table, c, former), std::max(0.0, table.columns[c].weight)});
  }
  const double room = former.width - tick - gutter * static_cast<double>(needs.size() - 1);
  auto widths = column_widths(needs, room, former.space("table.least"));
  if (!widths) {
    former.fault("a table has too many columns for the width of the page");
    return std::nullopt;
  }
  if (wants_more(needs, room)) widths = regiven(table, needs, *widths, former);
  Grid grid;
  grid.width = former.width;
  double left = tick;
  for (size_t c = 0; c < widths->size(); ++c) {
    grid.columns.push_back({left, (*widths)[c], table.columns[c].numeric});
    left += (*widths)[c] + gutter;
  }
  return grid;
}

size_t RowLines::count() const {
  size_t most = 0;
  for (const auto& cell : cells) most = std::max(most, cell.size());
  return most;
}

RowLines row_lines(const Cells& cells, const TextStyle& style, const Grid& grid,
                   const Former& former) {
  RowLines row;
  for (size_t c = 0; c < cells.size(); ++c) {
    row.cells.push_back(former.lines(cells[c], style, grid.columns[c].width + 0.01));
  }
  return row;
}

void set_row(const RowPart& part, const TextStyle& style, const Grid& grid,
             const std::vector<int>& tags, double top, Band& band) {
  for (size_t c = 0; c < part.lines.cells.size(); ++c) {
    const auto& lines = part.lines.cells[c];
    const Grid::Column& column = grid.columns[c];
    for (size_t i = part.from; i < std::min(part.to, lines.size()); ++i) {
      const double x = column.left + (column.flush_right ? column.width - lines[i].width : 0);
      const double y = top - style.leading * static_cast<double>(i - part.from);
      set_line(lines[i], style, {x, y, tags[c]}, band.marks);
    }
  }
}

}  // namespace loamsheet
