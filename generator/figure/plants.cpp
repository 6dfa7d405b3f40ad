#include "figure/plants.h"

#include <algorithm>
#include <cmath>

#include "figure/habit.h"

namespace loamsheet {
namespace {

constexpr double share = 1.0 / 3, least = 40;  // mm
const Pen plant_pen{0.35, 0, {}};

PlantShape shape_at(const Tank& t, const PlacedPlant& p, Millimetres spread, Millimetres height) {
  PlantShape shape;
  shape.habit = habit_of(t.in, p.number);
  shape.foot = {std::clamp(t.x(p.at.x), 0.0, t.width), std::clamp(p.at.z / t.scale, 0.0, t.height)};
  shape.spread = t.paper(spread);
  shape.height = t.paper(height);
  shape.on_mount = p.site == SiteKind::mount && shape.habit != "climber";
  shape.hangs = p.site != SiteKind::floor && shape.habit == "trailer";
  return shape;
}

PlantShape young(const Tank& t, const PlacedPlant& p) {
  return shape_at(t, p, planting_size(p.spread), planting_size(p.height));
}

// No leaf lies beyond a wall; `high` is the room's upper edge on paper.
void keep_in(Marks& marks, const Tank& t, double high) {
  const auto into = [&](std::vector<Point>& points) {
    for (Point& p : points) p = {std::clamp(p.x, 0.0, t.width), std::clamp(p.y, 0.0, high)};
  };
  for (Mark& m : marks) {
    if (auto* s = std::get_if<Stroke>(&m)) into(s->points);
    if (auto* f = std::get_if<Filled>(&m)) into(f->points);
  }
}

void add_mature(const Tank& t, const PlacedPlant& p, Marks& out) {
  if (p.spread.v <= 0 || p.height.v <= 0) return;
  const auto outline = habit_outline(shape_at(t, p, p.spread, p.height));
  const Box room{0.3, 0.3, t.width - 0.3, t.height - 0.3};
  for (auto& run : inside_runs(outline, [&](Point at) { return room.contains(at); })) {
    out.push_back(Stroke{std::move(run), false, pen::grown_up});
  }
}

Numbered front_number(const PlacedPlant& p, const Marks& sketch) {
  Numbered n;
  n.number = p.number;
  n.symbol = extent(sketch);
  n.wanted = {(n.symbol.left + n.symbol.right) / 2, n.symbol.top + 2.0};
  return n;
}

Numbered number_above(const PlacedPlant& p, Point at, double radius) {
  const double half = radius * std::sqrt(0.5);  // of the square inside the circle
  return {p.number, {at.x - half, at.y - half, at.x + half, at.y + half}, at, radius};
}

void add_spread(const Tank& t, const PlacedPlant& p, Point at, Marks& out) {
  const Region& floor = t.in.build.enclosure.footprint;
  const Box box = extent(floor);
  const auto inside = [&](Point q) {
    return contains(floor, {q.x * t.scale + box.left, q.y * t.scale + box.bottom});
  };
  auto circle = circle_points(at, t.paper(p.spread) / 2);
  circle.push_back(circle.front());
  for (auto& run : inside_runs(circle, inside)) {
    out.push_back(Stroke{std::move(run), false, pen::grown_up});
  }
}

}  // namespace

Millimetres planting_size(Millimetres mature) {
  return {std::max(std::min(mature.v, least), mature.v * share)};
}

std::vector<const PlacedPlant*> placed_plants(const FigureInput& in) {
  std::vector<const PlacedPlant*> out;
  if (!in.plan.planting) return out;
  for (const PlacedPlant& p : in.plan.planting->plants) {
    if (p.placed) out.push_back(&p);
  }
  return out;
}

std::string habit_of(const FigureInput& in, int number) {
  for (const PlantUse& use : in.build.plants) {
    if (use.number == number && use.facts.habit) return use.facts.habit->value;
  }
  return "";
}

std::vector<std::vector<Point>> inside_runs(const std::vector<Point>& points,
                                            const std::function<bool(Point)>& inside) {
  std::vector<std::vector<Point>> runs(1);
  for (const Point& p : points) {
    if (inside(p)) {
      runs.back().push_back(p);
    } else if (!runs.back().empty()) {
      runs.emplace_back();
    }
  }
  std::erase_if(runs, [](const auto& run) { return run.size() < 2; });
  return runs;
}

// Those at the back first, so that the front ones stand before them.
DrawnPlants plants_front(const Tank& t) {
  auto plants = placed_plants(t.in);
  std::stable_sort(plants.begin(), plants.end(),
                   [](const PlacedPlant* a, const PlacedPlant* b) { return a->at.y > b->at.y; });
  DrawnPlants out;
  for (const PlacedPlant* p : plants) add_mature(t, *p, out.marks);
  for (const PlacedPlant* p : plants) {
    Marks sketch = habit_sketch(young(t, *p));
    keep_in(sketch, t, t.height);
    out.numbered.push_back(front_number(*p, sketch));
    add(out.marks, std::move(sketch));
  }
  return out;
}

DrawnPlants plants_above(const Tank& t) {
  DrawnPlants out;
  const auto plants = placed_plants(t.in);
  const auto middle = [&](const PlacedPlant& p) { return Point{t.x(p.at.x), t.y(p.at.y)}; };
  for (const PlacedPlant* p : plants) add_spread(t, *p, middle(*p), out.marks);
  for (const PlacedPlant* p : plants) {
    const double radius = t.paper(planting_size(p->spread)) / 2;
    const auto circle = circle_points(middle(*p), radius);
    Marks plant{Filled{circle, plant_tone}, Stroke{circle, true, plant_pen}};
    keep_in(plant, t, t.depth);
    add(out.marks, std::move(plant));
    out.numbered.push_back(number_above(*p, middle(*p), radius));
  }
  return out;
}

}  // namespace loamsheet
