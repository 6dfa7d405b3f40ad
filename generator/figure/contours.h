// contours: closed lines around what exceeds a level, over a grid of samples (marching squares).
#pragma once
#include <vector>

#include "base/geometry.h"

namespace loamsheet {

// Samples at the nodes of a grid, row by row from the lower left; between them the value is taken
// to run straight.
struct Samples {
  Box box;
  int columns = 0, rows = 0;  // nodes, at least two each way
  std::vector<double> values;

  double at(int column, int row) const {
    return values[static_cast<size_t>(row) * static_cast<size_t>(columns) +
                  static_cast<size_t>(column)];
  }
  void put(int column, int row, double value) {
    values[static_cast<size_t>(row) * static_cast<size_t>(columns) + static_cast<size_t>(column)] =
        value;
  }
  Point node(int column, int row) const;
};

// The same samples with others between them, on smooth curves through them.
Samples twice_as_fine(const Samples&);

// A closed line with the higher side on its left: counter-clockwise around a height, clockwise
// around a hollow. Along the box's edge it closes what reaches beyond.
struct Ring {
  std::vector<Point> points;
  double area = 0;  // mm2; of a hollow below zero
};
std::vector<Ring> contours(const Samples&, double level);

// The parts of a ring that do not run along the box's edge, in order.
std::vector<std::vector<Point>> inner_runs(const Ring&, const Box&);

}  // namespace loamsheet
