#include "base/geometry.h"

#include <cmath>

#include "laws.h"

using namespace loamsheet;
using namespace loamsheet::tests;

namespace {

bool same(double a, double b) {
  return std::fabs(a - b) <= 1e-9 * std::max({1.0, std::fabs(a), std::fabs(b)});
}

double square_millimetres(const Region& r) {
  return area(r).v * 1e6;
}

Point moment(const Region& r) {
  const double a = square_millimetres(r);
  return a < 1e-3 ? Point{0, 0} : Point{centroid(r).x * a, centroid(r).y * a};
}

Region scaled(Region r, double by) {
  for (Vertex& v : r.corners) v.at.x *= by, v.at.y *= by;
  return r;
}

Region shifted(Region r, double x, double y) {
  for (Vertex& v : r.corners) v.at.x += x, v.at.y += y;
  return r;
}

double between(double low, double high) {
  return low + (high - low) * drawn(-20, 1020) / 1000.0;
}

}  // namespace

TEST_CASE("cutting a footprint in two and adding gives the whole") {
  holds("left and right add up in area and moment", [] {
    const Region whole = drawn_footprint();
    const double x = between(extent(whole).left, extent(whole).right);
    const Region left = left_of(whole, x), right = right_of(whole, x);
    RC_ASSERT(
        same(square_millimetres(left) + square_millimetres(right), square_millimetres(whole)));
    RC_ASSERT(std::fabs(moment(left).x + moment(right).x - moment(whole).x) <
              1e-7 * std::fabs(moment(whole).x));
    RC_ASSERT(std::fabs(moment(left).y + moment(right).y - moment(whole).y) <
              1e-7 * square_millimetres(whole) * extent(whole).height());
  });
}

TEST_CASE("a part lies in the whole and on its side of the cut") {
  holds("extents of parts", [] {
    const Region whole = drawn_footprint();
    const Box box = extent(whole);
    const double y = between(box.bottom, box.top);
    const Region part = below(whole, y);
    RC_ASSERT(square_millimetres(part) <= square_millimetres(whole) * (1 + 1e-12));
    RC_ASSERT(part.corners.empty() || extent(part).top <= y + 1e-6);
    RC_ASSERT(part.corners.empty() || extent(part).bottom >= box.bottom - 1e-6);
  });
}

TEST_CASE("area goes with the square of the scale, perimeter with the scale") {
  holds("scaling", [] {
    const Region whole = drawn_footprint();
    const double by = drawn(1, 300) / 100.0;
    RC_ASSERT(same(square_millimetres(scaled(whole, by)), by * by * square_millimetres(whole)));
    RC_ASSERT(same(perimeter(scaled(whole, by)).v, by * perimeter(whole).v));
  });
}

TEST_CASE("moving a footprint moves only its centroid") {
  holds("moving", [] {
    const Region whole = drawn_footprint();
    const Region moved = shifted(whole, 123, -45);
    RC_ASSERT(std::fabs(area(moved).v - area(whole).v) < 1e-9);
    RC_ASSERT(std::fabs(centroid(moved).x - centroid(whole).x - 123) < 1e-5);
    RC_ASSERT(std::fabs(centroid(moved).y - centroid(whole).y + 45) < 1e-5);
  });
}

TEST_CASE("no figure encloses more than the circle of its perimeter") {
  holds("isoperimetric inequality", [] {
    const Region whole = drawn_footprint();
    const double around = perimeter(whole).v;
    RC_ASSERT(4 * 3.14159265358979 * square_millimetres(whole) <= around * around * (1 + 1e-12));
  });
}

TEST_CASE("counting points agrees with the exact area") {
  holds("points of a grid", [] {
    const Region whole = drawn_footprint();
    const Box box = extent(whole);
    const double dx = box.width() / 60, dy = box.height() / 60;
    int inside = 0;
    for (int i = 0; i < 3600; ++i) {
      inside +=
          contains(whole, {box.left + (i % 60 + 0.513) * dx, box.bottom + (i / 60 + 0.487) * dy});
    }
    RC_ASSERT(std::fabs(inside * dx * dy / square_millimetres(whole) - 1) < 0.06);
  });
}
