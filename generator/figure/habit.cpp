#include "figure/habit.h"

#include <array>
#include <cmath>
#include <numbers>

namespace loamsheet {
namespace {

using std::numbers::pi;

constexpr double leaf_tone = 0.9, moss_tone = 0.8;
const Pen leaf_pen{0.25, 0, {}};
const Pen vein_pen{0.18, 0, {}};
const Pen stem_pen{0.35, 0, {}};

// A frame in which a plant is one wide and one high and stands on the origin.
struct Frame {
  const PlantShape& plant;
  Point at(double x, double y) const {
    const double up = plant.hangs ? -1 : 1;
    return {plant.foot.x + x * plant.spread, plant.foot.y + up * y * plant.height};
  }
};

// A leaf between two points, widest before its middle.
void leaf(Point from, Point tip, double breadth, Marks& out) {
  static constexpr std::array<double, 7> along{0, 0.15, 0.35, 0.55, 0.75, 0.9, 1};
  static constexpr std::array<double, 7> wide{0, 0.6, 1, 0.95, 0.62, 0.28, 0};
  const double dx = tip.x - from.x, dy = tip.y - from.y, half = breadth / 2;
  const auto on = [&](size_t i, double sign) {
    return Point{from.x + dx * along[i] - sign * dy * half * wide[i],
                 from.y + dy * along[i] + sign * dx * half * wide[i]};
  };
  std::vector<Point> edge;
  for (size_t i = 0; i < along.size(); ++i) edge.push_back(on(i, 1));
  for (size_t i = along.size() - 1; i-- > 1;) edge.push_back(on(i, -1));
  out.push_back(Filled{edge, leaf_tone});
  out.push_back(Stroke{std::move(edge), true, leaf_pen});
}

std::vector<Point> curve(Point a, Point b, Point c, int steps = 10) {
  std::vector<Point> points;
  for (int i = 0; i <= steps; ++i) {
    const double t = static_cast<double>(i) / steps, u = 1 - t;
    points.push_back(
        {u * u * a.x + 2 * u * t * b.x + t * t * c.x, u * u * a.y + 2 * u * t * b.y + t * t * c.y});
  }
  return points;
}

Marks upright(const Frame& f) {
  Marks out{Stroke{{f.at(0, 0), f.at(0, 0.75)}, false, stem_pen}};
  for (double y : {0.22, 0.45, 0.66}) {
    const double reach = 0.5 * (1.1 - 0.6 * y);
    for (double side : {-1.0, 1.0}) leaf(f.at(0, y), f.at(side * reach, y + 0.2), 0.45, out);
  }
  leaf(f.at(0, 0.7), f.at(0, 1), 0.5, out);
  return out;
}

Marks shrub(const Frame& f) {
  Marks out;
  for (double lean : {-0.28, 0.3, 0.02}) {
    out.push_back(
        Stroke{curve(f.at(0, 0), f.at(lean * 0.3, 0.4), f.at(lean, 0.75)), false, stem_pen});
    for (double side : {-1.0, 1.0}) {
      leaf(f.at(lean * 0.7, 0.5), f.at(lean * 0.7 + side * 0.17, 0.66), 0.6, out);
    }
    leaf(f.at(lean, 0.72), f.at(lean * 1.3, 1), 0.6, out);
  }
  return out;
}

// Leaves that fan out from one point, the outer ones first.
Marks fan(const Frame& f, int pairs, double breadth) {
  Marks out;
  for (int i = 0; i < pairs; ++i) {
    const double low = 0.04 + 0.25 * breadth, angle = pi * (low + (0.5 - low) * i / pairs);
    for (double side : {-1.0, 1.0}) {
      leaf(f.at(0, 0), f.at(side * 0.5 * std::cos(angle), std::sin(angle) * 0.96), breadth, out);
    }
  }
  leaf(f.at(0, 0), f.at(0, 1), breadth, out);
  return out;
}

Marks rosette(const Frame& f) {
  return fan(f, 3, 0.34);
}
Marks bromeliad(const Frame& f) {
  return fan(f, 4, 0.2);
}
Marks succulent(const Frame& f) {
  return fan(f, 2, 0.62);
}

// Arching fronds with short leaflets on both sides.
Marks fern(const Frame& f) {
  Marks out;
  for (double lean : {-1.0, -0.55, 0.0, 0.55, 1.0}) {
    const double top = 1 - 0.42 * std::fabs(lean);
    const auto frond = curve(f.at(0, 0), f.at(lean * 0.22, top), f.at(lean * 0.5, top * 0.86), 12);
    out.push_back(Stroke{frond, false, leaf_pen});
    for (size_t i = 3; i + 1 < frond.size(); ++i) {
      const Point p = frond[i], q = frond[i + 1];
      const double length = std::hypot(q.x - p.x, q.y - p.y);
      if (length == 0) continue;
      const double reach = 0.8 * (1.15 - static_cast<double>(i) / frond.size()) / length;
      const double nx = -(q.y - p.y) * reach, ny = (q.x - p.x) * reach;
      out.push_back(line({p.x + nx, p.y + ny}, {p.x - nx, p.y - ny}, vein_pen));
    }
  }
  return out;
}

Marks grass(const Frame& f) {
  Marks out;
  for (double lean : {-1.0, -0.7, -0.42, -0.15, 0.1, 0.36, 0.66, 1.0}) {
    const double top = 1 - 0.3 * lean * lean;
    out.push_back(
        Stroke{curve(f.at(lean * 0.06, 0), f.at(lean * 0.1, top), f.at(lean * 0.5, top * 0.92)),
               false, leaf_pen});
  }
  return out;
}

// A stem that winds, with leaves by turns.
Marks winding(const Frame& f, double off, Marks out) {
  std::vector<Point> stem;
  for (int i = 0; i <= 16; ++i) {
    const double y = i / 16.0;
    stem.push_back(f.at(off * std::min(1.0, y * 2) + 0.09 * std::sin(y * 9), y * 0.92));
  }
  out.push_back(Stroke{stem, false, stem_pen});
  for (size_t i = 3; i < stem.size(); i += 3) {
    const double side = i % 2 == 0 ? 1 : -1;
    const double size = std::min(0.3 * f.plant.spread, 0.22 * f.plant.height);
    leaf(stem[i], {stem[i].x + side * size, stem[i].y + 0.35 * size}, 0.62, out);
  }
  return out;
}

Marks climber(const Frame& f) {
  return winding(f, 0, {});
}

Marks trailer(const Frame& f) {
  return winding(f, 0, winding(f, 0.32, winding(f, -0.32, {})));
}

std::vector<Point> mound(const Frame& f, double bump, int bumps) {
  std::vector<Point> edge;
  const int steps = bumps * 6;
  for (int i = 0; i <= steps; ++i) {
    const double angle = pi * (1 - static_cast<double>(i) / steps);
    const double r = 1 - bump + bump * std::fabs(std::sin(bumps * angle));
    edge.push_back(f.at(0.5 * r * std::cos(angle), r * std::sin(angle)));
  }
  return edge;
}

Marks ground_cover(const Frame& f) {
  const auto edge = mound(f, 0.2, 7);
  Marks out{Filled{edge, leaf_tone}, Stroke{edge, false, leaf_pen}};
  for (Point p : {Point{-0.25, 0.3}, Point{0.02, 0.5}, Point{0.24, 0.28}, Point{-0.05, 0.18}}) {
    const std::vector<Point> arc =
        curve(f.at(p.x - 0.08, p.y), f.at(p.x, p.y + 0.25), f.at(p.x + 0.08, p.y), 6);
    out.push_back(Stroke{arc, false, vein_pen});
  }
  return out;
}

Marks moss(const Frame& f) {
  const auto edge = mound(f, 0.1, 9);
  Marks out{Filled{edge, moss_tone}, Stroke{edge, false, leaf_pen}};
  for (double x : {-0.36, -0.24, -0.12, 0.0, 0.12, 0.24, 0.36}) {
    const double top = std::sqrt(0.25 - x * x) * 1.5;
    out.push_back(line(f.at(x, top * 0.25), f.at(x, top), vein_pen));
  }
  return out;
}

// The piece of bark a plant is fixed to.
Marks bark(const PlantShape& plant) {
  const double half = std::clamp(plant.spread * 0.3, 0.8, 3.0), down = half * 0.9;
  const Point p = plant.foot;
  const Box plate{p.x - half, p.y - down, p.x + half, p.y + down * 0.7};
  Marks out{filled(plate, 0.72), outline_of(plate, leaf_pen)};
  return out;
}

using Sketcher = Marks (*)(const Frame&);

Sketcher sketcher_for(const std::string& habit) {
  struct Row {
    const char* habit;
    Sketcher sketch;
  };
  static constexpr Row rows[] = {
      {"bromeliad", bromeliad}, {"climber", climber},     {"epiphyte", rosette},
      {"fern", fern},           {"grass", grass},         {"ground-cover", ground_cover},
      {"moss", moss},           {"orchid", rosette},      {"rosette", rosette},
      {"shrub", shrub},         {"succulent", succulent}, {"trailer", trailer}};
  for (const Row& row : rows) {
    if (habit == row.habit) return row.sketch;
  }
  return upright;
}

}  // namespace

Marks habit_sketch(const PlantShape& plant) {
  Marks out = plant.on_mount ? bark(plant) : Marks{};
  add(out, sketcher_for(plant.habit)({plant}));
  return out;
}

std::vector<Point> habit_outline(const PlantShape& plant) {
  const Frame f{plant};
  std::vector<Point> dome;
  constexpr int steps = 40;
  for (int i = 0; i <= steps; ++i) {
    const double angle = pi * (1 - static_cast<double>(i) / steps);
    const double c = std::cos(angle), s = std::sin(angle);
    dome.push_back(f.at(0.5 * std::copysign(std::pow(std::fabs(c), 0.8), c), std::pow(s, 0.8)));
  }
  return dome;
}

}  // namespace loamsheet
