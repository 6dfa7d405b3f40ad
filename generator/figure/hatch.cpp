#include "figure/hatch.h"

#include <algorithm>
#include <cmath>
#include <cstdint>
#include <functional>
#include <numbers>

#include "base/named.h"

namespace loamsheet {
namespace {

using std::numbers::pi;
using Region2 = std::vector<Point>;

constexpr double least_height = 0.5;  // mm: thinner regions keep their tone alone
constexpr double most_marks = 420;    // a deeper layer gets a wider pattern

// A number from 0 to 1 that looks random and is the same everywhere.
double jitter(int i, int j, int salt) {
  uint32_t h = static_cast<uint32_t>(i) * 0x9e3779b1u ^ static_cast<uint32_t>(j) * 0x85ebca77u ^
               static_cast<uint32_t>(salt) * 0xc2b2ae3du;
  h = (h ^ (h >> 15)) * 0x2c1b3c6du;
  h = (h ^ (h >> 12)) * 0x297a2d39u;
  return static_cast<double>(h ^ (h >> 15)) / 4294967295.0;
}

Box bounds(const Region2& region) {
  Box box;
  for (const Point& p : region) box.add(p);
  return box;
}

// How far a point lies inside the nearest edge; negative outside.
double depth_inside(Point p, const Region2& region) {
  double least = 1e300;
  for (size_t i = 0; i < region.size(); ++i) {
    const Point a = region[i], b = region[(i + 1) % region.size()];
    const double length = std::hypot(b.x - a.x, b.y - a.y);
    if (length == 0) continue;
    least = std::min(least, ((b.x - a.x) * (p.y - a.y) - (b.y - a.y) * (p.x - a.x)) / length);
  }
  return least;
}

// The places of a pattern: rows that fill the height evenly, every second one moved by half.
struct Grid {
  double pitch;     // wanted distance, mm
  double flat = 1;  // height of a row against the pitch
};

struct Cell {
  Point at;
  double pitch;
  int row, column;
};

void each_cell(const Region2& region, Grid grid, const std::function<void(const Cell&)>& see) {
  const Box box = bounds(region);
  const double pitch = std::max(grid.pitch, std::sqrt(box.width() * box.height() / most_marks));
  const int rows = std::max(1, static_cast<int>(box.height() / (pitch * grid.flat) + 0.5));
  const double row_height = box.height() / rows;
  const int columns = static_cast<int>(box.width() / pitch) + 1;
  for (int r = 0; r < rows; ++r) {
    for (int c = 0; c < columns; ++c) {
      const Point at{box.left + (c + (r % 2 == 0 ? 0.25 : 0.75)) * pitch,
                     box.bottom + (r + 0.5) * row_height};
      see({at, std::min(pitch, row_height * 1.3), r, c});
    }
  }
}

void clipped_line(Marks& out, const Region2& region, std::pair<Point, Point> ends) {
  if (auto cut = clipped(ends.first, ends.second, region)) {
    out.push_back(line(cut->first, cut->second, pen::hatch));
  }
}

// A rounded stone: six corners, none at the same distance.
Mark pebble(const Cell& cell, double radius) {
  Stroke stone{{}, true, pen::hatch};
  for (int k = 0; k < 6; ++k) {
    const double angle = 2 * pi * (k + jitter(cell.row, cell.column, 3)) / 6;
    const double r = radius * (0.85 + 0.15 * jitter(cell.row * 7 + k, cell.column, 4));
    stone.points.push_back({cell.at.x + r * std::cos(angle), cell.at.y + r * std::sin(angle)});
  }
  return stone;
}

Marks pebbles(const Region2& region) {
  Marks out;
  each_cell(region, {2.7, 0.9}, [&](const Cell& cell) {
    const double room = depth_inside(cell.at, region) - 0.12;
    const double radius = cell.pitch * (0.30 + 0.13 * jitter(cell.row, cell.column, 1));
    if (std::min(radius, room) > 0.12) out.push_back(pebble(cell, std::min(radius, room)));
  });
  return out;
}

Marks fibres(const Region2& region) {
  Marks out;
  each_cell(region, {2.5, 0.62}, [&](const Cell& cell) {
    const double angle = (jitter(cell.row, cell.column, 1) - 0.5) * pi * 0.9;
    const double half = 0.35 + 0.35 * jitter(cell.row, cell.column, 2);
    const Point at{cell.at.x + (jitter(cell.row, cell.column, 3) - 0.5) * 1.1,
                   cell.at.y + (jitter(cell.row, cell.column, 4) - 0.5) * 0.5};
    const double dx = half * std::cos(angle), dy = half * std::sin(angle);
    clipped_line(out, region, {{at.x - dx, at.y - dy}, {at.x + dx, at.y + dy}});
  });
  return out;
}

Marks grains(const Region2& region) {
  Marks out;
  each_cell(region, {1.5, 0.8}, [&](const Cell& cell) {
    const Point at{cell.at.x + (jitter(cell.row, cell.column, 1) - 0.5) * 1.0,
                   cell.at.y + (jitter(cell.row, cell.column, 2) - 0.5) * 0.7};
    if (depth_inside(at, region) < 0.25) return;
    const double size = 0.14 + 0.12 * jitter(cell.row, cell.column, 3);
    out.push_back(filled({at.x - size, at.y - size, at.x + size, at.y + size}, 0.25));
  });
  return out;
}

Marks clay(const Region2& region) {
  Marks out;
  each_cell(region, {3.4, 0.4}, [&](const Cell& cell) {
    const double length = 1.6 + 0.9 * jitter(cell.row, cell.column, 1);
    clipped_line(out, region, {cell.at, {cell.at.x + length, cell.at.y}});
  });
  return out;
}

// A fallen leaf from the side: a low arch or a low bowl.
Marks leaves(const Region2& region) {
  Marks out;
  each_cell(region, {2.5, 0.5}, [&](const Cell& cell) {
    const double half = 0.75 + 0.25 * jitter(cell.row, cell.column, 1);
    const double lift = jitter(cell.row, cell.column, 2) < 0.5 ? 0.32 : -0.32;
    const Point mid{cell.at.x, cell.at.y + lift};
    clipped_line(out, region, {{cell.at.x - half, cell.at.y - lift}, mid});
    clipped_line(out, region, {mid, {cell.at.x + half, cell.at.y - lift * 0.6}});
  });
  return out;
}

Marks diagonal(const Region2& region) {
  Marks out;
  const Box box = bounds(region);
  for (double x = box.left - box.height(); x < box.right; x += 1.8) {
    clipped_line(out, region, {{x, box.bottom}, {x + box.height(), box.top}});
  }
  return out;
}

Marks posts(const Region2& region) {
  Marks out;
  const Box box = bounds(region);
  const int count = std::max(2, static_cast<int>(box.width() / 12) + 1);
  const double step = (box.width() - 4) / (count - 1);
  for (int i = 0; i < count; ++i) {
    for (double off : {-0.5, 0.5}) {
      const double x = box.left + 2 + i * step + off;
      clipped_line(out, region, {{x, box.bottom}, {x, box.top}});
    }
  }
  return out;
}

}  // namespace

// Cyrus and Beck (1978): the ends move in to where they meet each edge.
std::optional<std::pair<Point, Point>> clipped(Point a, Point b, const Region2& region) {
  const auto on = [&](double t) { return Point{a.x + (b.x - a.x) * t, a.y + (b.y - a.y) * t}; };
  double from = 0, to = 1;
  for (size_t i = 0; i < region.size(); ++i) {
    const Point p = region[i], q = region[(i + 1) % region.size()];
    const double nx = -(q.y - p.y), ny = q.x - p.x;  // inward
    const double start = nx * (a.x - p.x) + ny * (a.y - p.y);
    const double change = nx * (b.x - a.x) + ny * (b.y - a.y);
    if (change > 0) from = std::max(from, -start / change);
    if (change < 0) to = std::min(to, -start / change);
    if (change == 0 && start < 0) return std::nullopt;
  }
  if (from >= to) return std::nullopt;
  return std::pair{on(from), on(to)};
}

Marks hatch(Texture texture, const Region2& region) {
  using Make = Marks (*)(const Region2&);
  static constexpr For<Texture, Make> makers[] = {
      {Texture::pebbles, pebbles}, {Texture::fibres, fibres}, {Texture::grains, grains},
      {Texture::clay, clay},       {Texture::leaves, leaves}, {Texture::diagonal, diagonal},
      {Texture::posts, posts}};
  if (bounds(region).height() < least_height) return {};
  return what_of(makers, texture)(region);
}

}  // namespace loamsheet
