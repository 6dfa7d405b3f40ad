// The light map: sound at every size, its lines where the light is what they say, never through one
// another or through a value.
#include <catch2/catch.hpp>
#include <cmath>

#include "base/text.h"
#include "examples.h"
#include "figure/contours.h"
#include "figure/faults.h"
#include "figure/light_plane.h"
#include "figure/numbers.h"
#include "plan/light/light_field.h"

using namespace loamsheet;
using namespace loamsheet::examples;

namespace {

Lamp lamp(const char* kind, Position at) {
  Lamp l;
  l.kind = kind, l.id = "day", l.at = at;
  l.length = 400_mm, l.width = 150_mm, l.beam = 40;
  l.flux = 4000, l.photons_per_lux = 0.015, l.hours = 12;
  return l;
}

Example lit(Example x, const char* kind = "bar") {
  const Enclosure& tank = x.build.enclosure;
  x.build.lamps = {lamp(kind, {tank.width.v / 2, tank.depth.v / 2, tank.height.v + 60})};
  return x;
}

Figure drawn(const Example& x) {
  const Wording wording = words();
  auto figure = make_figure({x.build, x.plan, wording, faces()}, "light");
  REQUIRE(figure);
  return *figure.value;
}

Furnishing ledge(const Example& x) {
  Furnishing f;
  f.id = "shelf", f.kind = "ledge";
  f.at = {x.build.enclosure.width.v / 3, x.build.enclosure.depth.v / 2,
          x.build.enclosure.height.v * 0.6};
  f.width = 250_mm, f.depth = 200_mm, f.height = 30_mm;
  return f;
}

bool is_contour(const Stroke& s) {
  return s.pen.width == 0.25 && s.pen.dashes.empty() && !s.closed && s.points.size() > 2;
}

Samples hill(int columns, int rows) {
  Samples s{{0, 0, 60, 40}, columns, rows, {}};
  for (int row = 0; row < rows; ++row) {
    for (int column = 0; column < columns; ++column) {
      const Point p = s.node(column, row);
      s.values.push_back(-std::hypot(p.x - 30, p.y - 20));
    }
  }
  return s;
}

}  // namespace

TEST_CASE("a light map has no fault at any size and under any lamp") {
  for (const double size : {250.0, 450.0, 900.0, 1300.0, 2000.0}) {
    for (const auto kind : {"bar", "panel", "spot"}) {
      Example x = lit(humid({{size}, {size / 2}, {size * 0.6}}), kind);
      x.build.furnishings = {ledge(x)};
      const Figure f = drawn(x);
      CAPTURE(size, kind);
      CHECK(faults(f) == std::vector<std::string>{});
      CHECK(f.width <= 178);
      CHECK(f.height <= 112);
      CHECK_FALSE(f.alt.empty());
    }
  }
}

TEST_CASE("contour lines do not cross") {
  Example x = lit(humid());
  x.build.furnishings = {ledge(x)};
  const Figure f = drawn(x);
  std::vector<const Stroke*> lines;
  for (const Mark& m : f.marks) {
    const auto* s = std::get_if<Stroke>(&m);
    if (s && is_contour(*s)) lines.push_back(s);
  }
  REQUIRE(lines.size() >= 5);
  int crossings = 0;
  for (size_t i = 0; i < lines.size(); ++i) {
    for (size_t j = i + 1; j < lines.size(); ++j) {
      for (size_t a = 0; a + 1 < lines[i]->points.size(); ++a) {
        for (size_t b = 0; b + 1 < lines[j]->points.size(); ++b) {
          crossings += segments_meet(lines[i]->points[a], lines[i]->points[a + 1],
                                     lines[j]->points[b], lines[j]->points[b + 1]);
        }
      }
    }
  }
  CHECK(crossings == 0);
}

TEST_CASE("where a value stands the light is what it says") {
  const Example x = lit(humid());
  const Figure f = drawn(x);
  const LightField field(x.build);
  Box tank;  // the first filled area is the map's own
  for (const Mark& m : f.marks) {
    const auto* area = std::get_if<Filled>(&m);
    if (!area || !tank.empty()) continue;
    for (const Point& p : area->points) tank.add(p);
  }
  int values = 0;
  for (const Mark& m : f.marks) {
    const auto* label = std::get_if<Label>(&m);
    if (!label || label->text.find_first_not_of("0123456789") != std::string::npos) continue;
    const Point p{(label->box.left + label->box.right) / 2,
                  (label->box.bottom + label->box.top) / 2};
    if (!tank.contains(p)) continue;
    const double ground = extent(x.build.enclosure.footprint).left;
    const double z0 =
        (x.plan.layers.profile.litter_front.v + x.plan.layers.profile.litter_back.v) / 2;
    const Position at{ground + (p.x - tank.left) * f.scale, x.build.enclosure.depth.v / 2,
                      z0 + (p.y - tank.bottom) * f.scale};
    CHECK(field.at(at).ppfd == Approx(std::stod(label->text)).epsilon(0.08));
    ++values;
  }
  CHECK(values >= 4);
}

TEST_CASE("no lamp that shines, no light map") {
  const Example x = humid();
  const Wording wording = words();
  const auto figure = make_figure({x.build, x.plan, wording, faces()}, "light");
  REQUIRE_FALSE(figure);
  CHECK(figure.messages[0].message == "there is no light to draw: no lamp states its flux");
}

TEST_CASE("a contour around a round hill is a circle, its higher side on the left") {
  const auto rings = contours(hill(61, 41), -12);
  REQUIRE(rings.size() == 1);
  CHECK(rings[0].area == Approx(3.14159 * 144).epsilon(0.01));
  for (const Point& p : rings[0].points)
    CHECK(std::hypot(p.x - 30, p.y - 20) == Approx(12).epsilon(0.01));
  Samples hollow = hill(61, 41);
  for (double& v : hollow.values) v = -v;
  const auto around = contours(hollow, 12);
  REQUIRE(around.size() == 2);
  CHECK(around[0].area + around[1].area == Approx(60 * 40 - 3.14159 * 144).epsilon(0.01));
}

TEST_CASE("a contour that leaves the box is closed along its edge and drawn inside alone") {
  const auto rings = contours(hill(61, 41), -25);
  REQUIRE(rings.size() == 1);
  const auto runs = inner_runs(rings[0], {0, 0, 60, 40});
  REQUIRE(runs.size() == 2);
  for (const auto& run : runs) {
    for (const Point& p : run) CHECK(std::hypot(p.x - 30, p.y - 20) == Approx(25).epsilon(0.01));
  }
}

TEST_CASE("finer samples lie on the curve through the coarse ones") {
  Samples s{{0, 0, 10, 10}, 6, 6, {}};
  for (int row = 0; row < 6; ++row) {
    for (int column = 0; column < 6; ++column) s.values.push_back(column * column + 3 * row);
  }
  const Samples fine = twice_as_fine(s);
  CHECK(fine.columns == 11);
  CHECK(fine.at(4, 4) == s.at(2, 2));
  CHECK(fine.at(5, 4) == Approx(2.5 * 2.5 + 6));
  CHECK(fine.at(4, 5) == Approx(4 + 7.5));
}

TEST_CASE("levels are round numbers, finer where few would do") {
  CHECK(light_levels(9, 600) == std::vector<double>{10, 20, 50, 100, 200, 500});
  CHECK(light_levels(12, 110) == std::vector<double>{15, 20, 30, 50, 70, 100});
}
