#include "figure/contours.h"

#include <algorithm>
#include <array>
#include <cmath>

namespace loamsheet {
namespace {

constexpr double straight = 0.06;  // mm
constexpr double on_edge = 1e-6;   // mm
constexpr double least_area = 30;  // mm2: a speck says nothing

// The grid with a rim of lows around it, so that every line closes. Cells lie between four nodes;
// their edges are numbered: level ones first, then upright ones.
class Tracer {
 public:
  Tracer(const Samples& samples, double level)
      : s_(samples), level_(level), wide_(samples.columns + 2), high_(samples.rows + 2) {
    next_.assign(static_cast<size_t>(2 * wide_ * high_), -1);
  }

  std::vector<Ring> rings() {
    for (int row = 0; row + 1 < high_; ++row) {
      for (int column = 0; column + 1 < wide_; ++column) cross(column, row);
    }
    std::vector<Ring> all;
    for (size_t edge = 0; edge < next_.size(); ++edge) {
      if (next_[edge] >= 0) all.push_back(follow(static_cast<int>(edge)));
    }
    std::erase_if(all, [](const Ring& r) { return std::fabs(r.area) < least_area; });
    return all;
  }

 private:
  bool rim(int column, int row) const {
    return column == 0 || row == 0 || column == wide_ - 1 || row == high_ - 1;
  }
  double value(int column, int row) const { return s_.at(column - 1, row - 1); }
  bool above(int column, int row) const {
    return !rim(column, row) && value(column, row) >= level_;
  }
  int level_edge(int column, int row) const { return row * wide_ + column; }
  int upright_edge(int column, int row) const { return wide_ * high_ + row * wide_ + column; }

  // Joins the edges of a cell that the line crosses, the higher side on the left.
  void cross(int column, int row) {
    const bool corner[] = {above(column, row), above(column + 1, row), above(column + 1, row + 1),
                           above(column, row + 1)};
    const int edge[] = {level_edge(column, row), upright_edge(column + 1, row),
                        level_edge(column, row + 1), upright_edge(column, row)};
    // Going round counter-clockwise, the line enters the cell where a low corner follows a high one
    // and leaves it where a high one follows a low one. Of a saddle's two ways in, each leads out
    // by the next edge when the heights are joined over it, else by the one before.
    int enters[2], leaves[2], in = 0, out = 0;
    for (int i = 0; i < 4; ++i) {
      const bool here = corner[i], there = corner[(i + 1) % 4];
      if (here && !there) enters[in++] = i;
      if (!here && there) leaves[out++] = i;
    }
    if (in == 0) return;
    if (in == 1) {
      next_[static_cast<size_t>(edge[enters[0]])] = edge[leaves[0]];
      return;
    }
    const bool joined = saddle_is_high(column, row);
    for (int i = 0; i < 2; ++i) {
      const int to = (enters[i] + (joined ? 1 : 3)) % 4;
      next_[static_cast<size_t>(edge[enters[i]])] = edge[to];
    }
  }

  bool saddle_is_high(int column, int row) const {
    const auto v = [&](int c, int r) { return rim(c, r) ? level_ - 1 : value(c, r); };
    return v(column, row) + v(column + 1, row) + v(column, row + 1) + v(column + 1, row + 1) >=
           4 * level_;
  }

  Ring follow(int start) {
    Ring ring;
    for (int edge = start; next_[static_cast<size_t>(edge)] >= 0;) {
      const Point p = place(edge);
      if (ring.points.empty() || !(ring.points.back() == p)) ring.points.push_back(p);
      const int after = next_[static_cast<size_t>(edge)];
      next_[static_cast<size_t>(edge)] = -1;
      edge = after;
    }
    for (size_t i = 0; i < ring.points.size(); ++i) {
      const Point &a = ring.points[i], &b = ring.points[(i + 1) % ring.points.size()];
      ring.area += (a.x * b.y - b.x * a.y) / 2;
    }
    return ring;
  }

  // Where the line crosses an edge; at the rim that is the box's edge itself.
  Point place(int edge) const {
    const bool upright = edge >= wide_ * high_;
    const int cell = upright ? edge - wide_ * high_ : edge;
    const int column = cell % wide_, row = cell / wide_;
    const int column2 = column + (upright ? 0 : 1), row2 = row + (upright ? 1 : 0);
    if (rim(column, row)) return s_.node(column2 - 1, row2 - 1);
    if (rim(column2, row2)) return s_.node(column - 1, row - 1);
    const double a = value(column, row), b = value(column2, row2);
    const double t = a == b ? 0 : std::clamp((level_ - a) / (b - a), 0.0, 1.0);
    const Point p = s_.node(column - 1, row - 1), q = s_.node(column2 - 1, row2 - 1);
    return {p.x + t * (q.x - p.x), p.y + t * (q.y - p.y)};
  }

  const Samples& s_;
  double level_;
  int wide_, high_;
  std::vector<int> next_;  // the edge that the line crosses after an edge; none: -1
};

// The value halfway between the middle two of four that follow each other, on the curve through
// them (Catmull and Rom 1974).
double halfway(const std::array<double, 4>& v) {
  return (9 * (v[1] + v[2]) - v[0] - v[3]) / 16;
}

// Keeps what is needed of the points between two of a line (Douglas and Peucker 1973).
void keep(const std::vector<Point>& all, size_t from, size_t to, std::vector<bool>& kept) {
  const Point &a = all[from], &b = all[to % all.size()];
  const double length = std::hypot(b.x - a.x, b.y - a.y);
  size_t furthest = from;
  double most = straight;
  for (size_t i = from + 1; i < to; ++i) {
    const Point& p = all[i];
    const double away =
        length > 0 ? std::fabs((b.x - a.x) * (p.y - a.y) - (b.y - a.y) * (p.x - a.x)) / length
                   : std::hypot(p.x - a.x, p.y - a.y);
    if (away > most) furthest = i, most = away;
  }
  if (furthest == from) return;
  kept[furthest] = true;
  keep(all, from, furthest, kept);
  keep(all, furthest, to, kept);
}

void simplify(std::vector<Point>& points) {
  std::vector<bool> kept(points.size());
  kept[0] = true;
  keep(points, 0, points.size(), kept);
  size_t count = 0;
  for (size_t i = 0; i < points.size(); ++i) {
    if (kept[i]) points[count++] = points[i];
  }
  points.resize(count);
}

// Both ends on one side of the box.
bool along_edge(Point a, Point b, const Box& box) {
  const auto both = [](double u, double v, double side) {
    return std::fabs(u - side) < on_edge && std::fabs(v - side) < on_edge;
  };
  return both(a.x, b.x, box.left) || both(a.x, b.x, box.right) || both(a.y, b.y, box.bottom) ||
         both(a.y, b.y, box.top);
}

}  // namespace

Point Samples::node(int column, int row) const {
  return {box.left + box.width() * column / (columns - 1),
          box.bottom + box.height() * row / (rows - 1)};
}

Samples twice_as_fine(const Samples& s) {
  Samples fine{s.box, 2 * s.columns - 1, 2 * s.rows - 1, {}};
  fine.values.resize(static_cast<size_t>(fine.columns) * static_cast<size_t>(fine.rows));
  for (int row = 0; row < s.rows; ++row) {
    for (int column = 0; column < s.columns; ++column) {
      const auto at = [&](int c) { return s.at(std::clamp(c, 0, s.columns - 1), row); };
      fine.put(2 * column, 2 * row, at(column));
      if (column + 1 == s.columns) continue;
      fine.put(2 * column + 1, 2 * row,
               halfway({at(column - 1), at(column), at(column + 1), at(column + 2)}));
    }
  }
  for (int row = 0; row + 1 < s.rows; ++row) {
    for (int column = 0; column < fine.columns; ++column) {
      const auto at = [&](int r) { return fine.at(column, 2 * std::clamp(r, 0, s.rows - 1)); };
      fine.put(column, 2 * row + 1, halfway({at(row - 1), at(row), at(row + 1), at(row + 2)}));
    }
  }
  return fine;
}

std::vector<Ring> contours(const Samples& samples, double level) {
  std::vector<Ring> rings = Tracer(samples, level).rings();
  for (Ring& ring : rings) simplify(ring.points);
  return rings;
}

std::vector<std::vector<Point>> inner_runs(const Ring& ring, const Box& box) {
  const auto& p = ring.points;
  const size_t count = p.size();
  const auto edge = [&](size_t i) { return along_edge(p[i % count], p[(i + 1) % count], box); };
  size_t start = 0;
  while (start < count && !edge(start)) ++start;
  if (start == count) {  // it nowhere meets the edge
    std::vector<Point> whole = p;
    if (!whole.empty()) whole.push_back(whole.front());
    return {std::move(whole)};
  }
  std::vector<std::vector<Point>> runs;
  bool open = false;
  for (size_t i = start; i < start + count; ++i) {
    if (edge(i)) {
      open = false;
      continue;
    }
    if (!open) runs.push_back({p[i % count]});
    runs.back().push_back(p[(i + 1) % count]);
    open = true;
  }
  return runs;
}

}  // namespace loamsheet
