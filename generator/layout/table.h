// A table being set: its columns' places and its cells' lines.
#pragma once
#include <optional>
#include <vector>

#include "layout/form.h"

namespace loamsheet {

using Cells = std::vector<Words>;

struct Grid {
  struct Column {
    double left = 0, width = 0;
    bool flush_right = false;
  };
  std::vector<Column> columns;
  double width = 0;
};

// The places of the columns, fitted to their content; a box to tick stands left of the first.
// Nothing (and a fault) when there is no room for them.
std::optional<Grid> fitted_grid(const Table&, const Former&);

// The lines of one row, all cells set in one style.
struct RowLines {
  std::vector<std::vector<Line>> cells;
  size_t count() const;  // of the cell with the most
};
RowLines row_lines(const Cells&, const TextStyle&, const Grid&, const Former&);

// Lines [from, to) of every cell of a row.
struct RowPart {
  const RowLines& lines;
  size_t from, to;
};

// Puts the lines into the band from `top` down; tags: of the cells.
void set_row(const RowPart&, const TextStyle&, const Grid&, const std::vector<int>& tags,
             double top, Band&);

Cells bold(const Cells&);

}  // namespace loamsheet
