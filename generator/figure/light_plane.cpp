#include "figure/light_plane.h"

#include <algorithm>
#include <cmath>

#include "plan/light/light.h"

namespace loamsheet {
namespace {

constexpr double step = 2.5;     // mm on paper between samples
constexpr double dark = 4;       // umol m-2 s-1: less is too dark for any plant; from memory
constexpr double under_top = 1;  // mm: at the top itself a place would be outside
constexpr size_t few = 5;        // levels that are too few
const Pen cut_pen{0.35, 0, {}};

int nodes(double length) {
  return std::clamp(static_cast<int>(std::lround(length / step)) + 1, 8, 72);
}

// Where a level line through a turned box leaves it.
std::optional<Range<double>> across(const Solid& box, double y) {
  const double dy = y - box.middle.y;
  double from = -1e9, to = 1e9;
  const auto within = [&](double along, double offset, double half) {
    if (std::fabs(along) < 1e-9) {
      if (std::fabs(offset) > half) from = 1, to = 0;
      return;
    }
    const double a = (-half - offset) / along, b = (half - offset) / along;
    from = std::max(from, std::min(a, b)), to = std::min(to, std::max(a, b));
  };
  within(box.cosine, dy * box.sine, box.half[0]);
  within(-box.sine, dy * box.cosine, box.half[1]);
  if (from >= to) return std::nullopt;
  return Range<double>{box.middle.x + from, box.middle.x + to};
}

// The part of a rod that is nearer to the plane than it is thick, as a bar; real millimetres.
std::vector<Point> rod_cut(const Solid& rod, double y) {
  const double dx = rod.to.x - rod.from.x, dy = rod.to.y - rod.from.y, dz = rod.to.z - rod.from.z;
  double from = 0, to = 1;
  if (std::fabs(dy) < 1e-9) {
    if (std::fabs(rod.from.y - y) > rod.radius) return {};
  } else {
    const double a = (y - rod.radius - rod.from.y) / dy, b = (y + rod.radius - rod.from.y) / dy;
    from = std::max(from, std::min(a, b)), to = std::min(to, std::max(a, b));
  }
  const double length = std::hypot(dx, dz);
  if (from >= to || length == 0) return {};
  const double nx = -dz / length * rod.radius, nz = dx / length * rod.radius;
  const Point a{rod.from.x + from * dx, rod.from.z + from * dz},
      b{rod.from.x + to * dx, rod.from.z + to * dz};
  return {{a.x - nx, a.y - nz}, {b.x - nx, b.y - nz}, {b.x + nx, b.y + nz}, {a.x + nx, a.y + nz}};
}

std::vector<Point> cut(const Solid& solid, double y) {
  if (solid.rod) return rod_cut(solid, y);
  const auto reach = across(solid, y);
  if (!reach) return {};
  return rectangle_points({reach->low, solid.around.low.z, reach->high, solid.around.high.z});
}

void add_things(const Tank& t, double y, LightPlane& plane) {
  const Box& box = plane.samples.box;
  for (const Solid& solid : solids_in(t.in.build)) {
    std::vector<Point> points = cut(solid, y);
    if (points.empty()) continue;
    for (Point& p : points) {
      p = {std::clamp(t.x(p.x), box.left, box.right),
           std::clamp(p.y / t.scale, box.bottom, box.top)};
    }
    plane.things.push_back(Filled{points, 1});
    plane.things.push_back(Stroke{std::move(points), true, cut_pen});
    plane.taken.push_back(extent(plane.things.back()));
  }
}

// Lamps are counted in parts, so shadows fall in steps: evened out along one line of samples.
void even_out(std::vector<double>& values, size_t start, size_t stride, size_t count) {
  double before = values[start];
  for (size_t i = 0; i + 1 < count; ++i) {
    double& here = values[start + i * stride];
    const double was = here;
    here = (before + 2 * was + values[start + (i + 1) * stride]) / 4;
    before = was;
  }
}

void even_out(Samples& s) {
  const auto columns = static_cast<size_t>(s.columns), rows = static_cast<size_t>(s.rows);
  for (size_t row = 0; row < rows; ++row) even_out(s.values, row * columns, 1, columns);
  for (size_t column = 0; column < columns; ++column) even_out(s.values, column, columns, rows);
}

void sample(const Tank& t, double y, LightPlane& plane) {
  Samples& s = plane.samples;
  const LightField field(t.in.build);
  const double left = extent(t.in.build.enclosure.footprint).left;
  plane.least = 1e9, plane.ground = {1e9, 0};
  for (int row = 0; row < s.rows; ++row) {
    for (int column = 0; column < s.columns; ++column) {
      const Point p = s.node(column, row);
      const double ppfd = std::max(dark, field.at({p.x * t.scale + left, y, p.y * t.scale}).ppfd);
      s.values.push_back(std::log(ppfd));
      plane.least = std::min(plane.least, ppfd), plane.most = std::max(plane.most, ppfd);
      if (row > 0) continue;
      plane.ground.low = std::min(plane.ground.low, ppfd);
      plane.ground.high = std::max(plane.ground.high, ppfd);
    }
  }
}

std::vector<double> levels_of(std::initializer_list<double> series, const Range<double>& between) {
  std::vector<double> levels;
  for (double ten = 0.1; ten < 1e5; ten *= 10) {
    for (const double one : series) {
      const double level = one * ten;
      if (level > between.low * 1.02 && level < between.high * 0.98) levels.push_back(level);
    }
  }
  return levels;
}

}  // namespace

LightPlane light_plane(const Tank& t) {
  const Box floor = extent(t.in.build.enclosure.footprint);
  const double y = (floor.bottom + floor.top) / 2;
  LightPlane plane;
  plane.samples.box = {0, t.surface(t.depth / 2), t.width, t.height};
  plane.samples.columns = nodes(t.width);
  plane.samples.rows = nodes(plane.samples.box.height());
  sample(t, y, plane);
  even_out(plane.samples);
  plane.samples = twice_as_fine(plane.samples);
  add_things(t, y, plane);
  return plane;
}

std::vector<double> light_levels(double least, double most) {
  const Range<double> between{least, most};
  const auto coarse = levels_of({1, 2, 5}, between);
  return coarse.size() >= few ? coarse : levels_of({1, 1.5, 2, 3, 5, 7}, between);
}

}  // namespace loamsheet
