#include "plan/place/bound.h"

#include <algorithm>
#include <cmath>
#include <limits>
#include <map>
#include <tuple>

namespace loamsheet {
namespace {

using CellIndex = std::tuple<long, long, long>;

// The longest edge of a cube whose corners are nearer to each other than any two plants may be.
double cell_edge(const PlacementTask& task) {
  double least = std::numeric_limits<double>::max();
  const auto& movable = task.movable();
  for (const size_t a : movable) {
    for (const size_t b : movable) {
      if (a != b) least = std::min(least, task.kept(a, b));
    }
  }
  return least / std::sqrt(3.0) * 0.999;
}

CellIndex cell_of(const Position& at, double edge) {
  return {std::lround(std::floor(at.x / edge)), std::lround(std::floor(at.y / edge)),
          std::lround(std::floor(at.z / edge))};
}

// What each plant is worth in each cell. Of its cells a plant needs no more than there are plants:
// the others cannot take more than all but one.
class CellWorths {
 public:
  explicit CellWorths(const PlacementTask& task) : rows_(task.movable().size()) {
    const double edge = cell_edge(task);
    for (size_t row = 0; row < rows_.size(); ++row) {
      for (const SiteWorth& spot : task.spots(task.movable()[row])) {
        if (spot.worth <= 0 || rows_[row].size() >= rows_.size()) break;
        rows_[row].emplace(column(cell_of(task.site(spot.site).at, edge)), spot.worth);
      }
    }
  }

  size_t rows() const { return rows_.size(); }

  // One more column a plant, in which it is worth nothing: it stays without a place.
  size_t columns() const { return columns_.size() + rows_.size(); }

  long worth(size_t row, size_t column) const {
    const auto found = rows_[row].find(column);
    return found == rows_[row].end() ? 0 : found->second;
  }

 private:
  size_t column(const CellIndex& cell) {
    return columns_.try_emplace(cell, columns_.size()).first->second;
  }

  std::map<CellIndex, size_t> columns_;
  std::vector<std::map<size_t, long>> rows_;
};

// The assignment of rows to columns with the greatest sum; rows and columns count from 1, column 0
// holds the row that looks for a place.
class Assignment {
 public:
  explicit Assignment(const CellWorths& table) : rows_(table.rows()), columns_(table.columns()) {
    worth_.resize((rows_ + 1) * (columns_ + 1));
    for (size_t r = 0; r < rows_; ++r) {
      for (size_t c = 0; c < columns_; ++c) at(r + 1, c + 1) = -table.worth(r, c);
    }
    row_price_.resize(rows_ + 1), column_price_.resize(columns_ + 1);
    holder_.resize(columns_ + 1), way_.resize(columns_ + 1);
  }

  long solve() {
    for (size_t row = 1; row <= rows_; ++row) seat(row);
    long sum = 0;
    for (size_t c = 1; c <= columns_; ++c) sum -= holder_[c] ? at(holder_[c], c) : 0;
    return sum;
  }

 private:
  long& at(size_t row, size_t column) { return worth_[row * (columns_ + 1) + column]; }

  void seat(size_t row) {
    least_.assign(columns_ + 1, std::numeric_limits<long>::max());
    used_.assign(columns_ + 1, false);
    holder_[0] = row;
    size_t column = 0;
    do {
      column = step(column);
    } while (holder_[column] != 0);
    for (; column != 0; column = way_[column]) holder_[column] = holder_[way_[column]];
  }

  // Grows the tree of shortest ways by the nearest column.
  size_t step(size_t from) {
    used_[from] = true;
    const size_t row = holder_[from];
    long delta = std::numeric_limits<long>::max();
    size_t nearest = 0;
    for (size_t c = 1; c <= columns_; ++c) {
      if (used_[c]) continue;
      const long here = at(row, c) - row_price_[row] - column_price_[c];
      if (here < least_[c]) least_[c] = here, way_[c] = from;
      if (least_[c] < delta) delta = least_[c], nearest = c;
    }
    for (size_t c = 0; c <= columns_; ++c) {
      if (used_[c]) {
        row_price_[holder_[c]] += delta, column_price_[c] -= delta;
      } else if (c > 0) {
        least_[c] -= delta;
      }
    }
    return nearest;
  }

  size_t rows_, columns_;
  std::vector<long> worth_, row_price_, column_price_, least_;
  std::vector<size_t> holder_, way_;
  std::vector<bool> used_;
};

}  // namespace

long placement_bound(const PlacementTask& task) {
  long sum = 0;
  for (size_t i = 0; i < task.count(); ++i) {
    if (task.plant(i).fixed) sum += task.spots(i).front().worth;
  }
  const CellWorths table(task);
  return table.rows() == 0 ? sum : sum + Assignment(table).solve();
}

}  // namespace loamsheet
