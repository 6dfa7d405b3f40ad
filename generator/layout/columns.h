// Columns: how wide the columns of a table are, from what they hold.
#pragma once
#include <optional>
#include <vector>

#include "layout/measure.h"

namespace loamsheet {

struct ColumnNeed {
  Need need;
  double weight = 1;  // share of spare width; not negative
};

// Widths in points that add up to `width` (less when no column takes spare width). Spare width is
// shared by weight; when the columns want more than there is, each has its least and a share of
// the rest by what it wants beyond (the automatic table layout of CSS 2.1, 17.5.2.2). When even
// the least is too much, wide columns give way first; none gets less than `floor`, and nothing
// comes back when that is not possible.
std::optional<std::vector<double>> column_widths(const std::vector<ColumnNeed>&, double width,
                                                 double floor);

// The same width given out again once the lines are known: each column has what its lines take
// (need.least), and what is left goes to the columns that want least to stand unbroken. For
// columns that want more than there is.
std::vector<double> regiven_widths(const std::vector<ColumnNeed>&, double width);

}  // namespace loamsheet
