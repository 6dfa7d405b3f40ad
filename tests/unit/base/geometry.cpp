#include "base/geometry.h"

#include <catch2/catch.hpp>
#include <cmath>
#include <numbers>

using namespace loamsheet;
using std::numbers::pi;

namespace {

Approx near(double v) {
  return Approx(v).epsilon(1e-9).margin(1e-6);
}

const std::vector<Point> boot = {{0, 0}, {400, 0}, {400, 200}, {200, 200}, {200, 500}, {0, 500}};

std::vector<Region> every_footprint() {
  return {rectangle(900_mm, 450_mm),
          bow_front(900_mm, 450_mm, 120_mm),
          bow_front(600_mm, 300_mm, 300_mm),
          cut_corner(600_mm, 250_mm),
          hexagon(500_mm),
          circle(600_mm),
          polygon(boot)};
}

}  // namespace

TEST_CASE("a rectangle") {
  const Region r = rectangle(900_mm, 450_mm);
  CHECK(area(r).v == near(0.405));
  CHECK(perimeter(r).v == near(2700));
  CHECK(centroid(r).x == near(450));
  CHECK(centroid(r).y == near(225));
}

TEST_CASE("a bow front adds a circular segment at negative y") {
  // Radius, angle and segment by the handbook: r = (c²/4 + h²) / 2h, A = r²(θ - sin θ)/2.
  const double c = 900, h = 120, r = (c * c / 4 + h * h) / (2 * h),
               theta = 2 * std::asin(c / 2 / r);
  const double segment = r * r * (theta - std::sin(theta)) / 2;
  const double segment_y =
      -(c * c * c / 12 / segment - (r - h));  // c³/12A is its centroid's radius
  const Region bow = bow_front(900_mm, 450_mm, 120_mm);
  CHECK(area(bow).v * 1e6 == near(900 * 450 + segment));
  CHECK(perimeter(bow).v == near(900 + 2 * 450 + r * theta));
  CHECK(centroid(bow).x == near(450));
  CHECK(centroid(bow).y == near((405000.0 * 225 + segment * segment_y) / (405000 + segment)));
  CHECK(extent(bow).bottom == near(-120));
  CHECK(extent(bow).top == near(450));
  CHECK(extent(bow).width() == near(900));
}

TEST_CASE("the fullest bow is a half circle") {
  const Region bow = bow_front(600_mm, 300_mm, 300_mm);
  CHECK(area(bow).v * 1e6 == near(600 * 300 + pi * 300 * 300 / 2));
  CHECK(perimeter(bow).v == near(1200 + pi * 300));
  CHECK(extent(bow).bottom == near(-300));
}

TEST_CASE("a very flat bow is still exact") {
  const Region bow = bow_front(900_mm, 450_mm, {0.5});
  CHECK(area(bow).v * 1e6 == Approx(405000 + 2.0 / 3.0 * 900 * 0.5).epsilon(1e-8));
  CHECK(centroid(bow).x == Approx(450).epsilon(1e-6));
}

TEST_CASE("a corner tank lacks a triangle at the front right") {
  const Region r = cut_corner(600_mm, 250_mm);
  CHECK(area(r).v * 1e6 == near(360000 - 250 * 250 / 2.0));
  CHECK(perimeter(r).v == near(4 * 600 - 2 * 250 + 250 * std::sqrt(2.0)));
  CHECK_FALSE(contains(r, {590, 10}));
  CHECK(contains(r, {10, 10}));
  CHECK(contains(r, {590, 590}));
}

TEST_CASE("a hexagon has flats in front and at the back") {
  const Region r = hexagon(500_mm);
  const double edge = 500 / std::sqrt(3.0);
  CHECK(area(r).v * 1e6 == near(1.5 * std::sqrt(3.0) * edge * edge));
  CHECK(perimeter(r).v == near(6 * edge));
  CHECK(extent(r).height() == near(500));
  CHECK(extent(r).width() == near(2 * edge));
  CHECK(centroid(r).x == near(edge));
  CHECK(centroid(r).y == near(250));
}

TEST_CASE("a circle") {
  const Region r = circle(600_mm);
  CHECK(area(r).v * 1e6 == near(pi * 300 * 300));
  CHECK(perimeter(r).v == near(pi * 600));
  CHECK(centroid(r).x == near(300));
  CHECK(centroid(r).y == near(300));
  CHECK(extent(r).bottom == near(0));
  CHECK(extent(r).top == near(600));
}

TEST_CASE("an outline is the same whichever way round it is listed") {
  std::vector<Point> back(boot.rbegin(), boot.rend());
  for (const Region& r : {polygon(boot), polygon(back)}) {
    CHECK(area(r).v * 1e6 == near(400 * 200 + 200 * 300));
    CHECK(perimeter(r).v == near(1800));
    CHECK(centroid(r).x == near((80000.0 * 200 + 60000.0 * 100) / 140000));
    CHECK(centroid(r).y == near((80000.0 * 100 + 60000.0 * 350) / 140000));
  }
}

TEST_CASE("an outline that crosses itself is seen") {
  CHECK(crosses_itself({{0, 0}, {100, 100}, {100, 0}, {0, 100}}));
  CHECK(crosses_itself({{0, 0}, {100, 0}, {100, 100}, {50, 0}, {0, 100}}));  // touches an edge
  CHECK_FALSE(crosses_itself(boot));
  CHECK_FALSE(crosses_itself({{0, 0}, {100, 0}, {0, 100}}));
}

TEST_CASE("half a circle is cut off exactly, also through the ends of its arcs") {
  for (const Region& half :
       {below(circle(600_mm), 300), left_of(circle(600_mm), 300), right_of(circle(600_mm), 300)}) {
    CHECK(area(half).v * 1e6 == near(pi * 300 * 300 / 2));
    CHECK(perimeter(half).v == near(pi * 300 + 600));
  }
}

TEST_CASE("a segment is cut off a circle as the handbook has it") {
  const double r = 300, h = 100, theta = 2 * std::acos((r - h) / r);
  const double segment = r * r * (theta - std::sin(theta)) / 2;
  CHECK(area(below(circle(600_mm), 100)).v * 1e6 == near(segment));
  CHECK(area(left_of(circle(600_mm), 100)).v * 1e6 == near(segment));
  CHECK(area(right_of(circle(600_mm), 500)).v * 1e6 == near(segment));
}

TEST_CASE("the centroid of a part with an arc is the handbook's") {
  // Of a half disc: 4r/3π from the straight edge.
  CHECK(centroid(below(circle(600_mm), 300)).y == near(300 - 4 * 300 / (3 * pi)));
  CHECK(centroid(left_of(circle(600_mm), 300)).x == near(300 - 4 * 300 / (3 * pi)));
  CHECK(centroid(right_of(circle(600_mm), 300)).x == near(300 + 4 * 300 / (3 * pi)));
  CHECK(centroid(right_of(circle(600_mm), 300)).y == near(300));
}

TEST_CASE("a cut that takes nothing or everything") {
  for (const Region& r : every_footprint()) {
    CHECK(area(left_of(r, -1)).v == near(0));
    CHECK(area(right_of(r, -1)).v == near(area(r).v));
    CHECK(area(below(r, 5000)).v == near(area(r).v));
    CHECK(area(below(r, -500)).v == near(0));
  }
}

TEST_CASE("a cut on the edge of a region takes all of it") {
  CHECK(area(below(rectangle(900_mm, 450_mm), 450)).v == near(0.405));
  CHECK(area(right_of(rectangle(900_mm, 450_mm), 900)).v == near(0));
}

TEST_CASE("a cut through a bent outline takes both of its limbs") {
  const Region fork = polygon(
      {{0, 0}, {300, 0}, {300, 300}, {200, 300}, {200, 100}, {100, 100}, {100, 300}, {0, 300}});
  CHECK(area(below(fork, 200)).v * 1e6 == near(300 * 100 + 2 * 100 * 100));
}

TEST_CASE("points inside and outside") {
  const Region bow = bow_front(900_mm, 450_mm, 120_mm);
  CHECK(contains(bow, {450, -100}));
  CHECK_FALSE(contains(bow, {450, -130}));
  CHECK_FALSE(contains(bow, {20, -100}));
  CHECK_FALSE(contains(bow, {-1, 100}));
  CHECK(contains(polygon(boot), {100, 400}));
  CHECK_FALSE(contains(polygon(boot), {300, 400}));
  CHECK(contains(polygon(boot), {200, 100}));  // right under a corner
}

TEST_CASE("how far a region reaches at an x") {
  const auto reach = reach_at(bow_front(900_mm, 450_mm, 120_mm), 450);
  REQUIRE(reach);
  CHECK(reach->low.v == near(-120));
  CHECK(reach->high.v == near(450));
  CHECK_FALSE(reach_at(rectangle(900_mm, 450_mm), 901));
}

TEST_CASE("an outline for drawing keeps to the curve") {
  const std::vector<Point> points = outline(circle(600_mm), 0.5);
  for (size_t i = 0; i < points.size(); ++i) {
    const Point a = points[i], b = points[(i + 1) % points.size()];
    CHECK(std::hypot(a.x - 300, a.y - 300) == near(300));
    CHECK(std::hypot((a.x + b.x) / 2 - 300, (a.y + b.y) / 2 - 300) >= 299.5);
  }
}

TEST_CASE("boxes") {
  Box box;
  CHECK(box.empty());
  CHECK(box.width() == 0);
  box.add(Point{10, 20});
  box.add(Point{-5, 40});
  CHECK(box.width() == 15);
  CHECK(box.height() == 20);
  CHECK(box.contains({0, 30}));
  CHECK_FALSE(box.contains({11, 30}));
  CHECK(box.contains({11, 30}, 1));
  Box beside;
  beside.add(Point{10, 20});
  beside.add(Point{30, 30});
  CHECK_FALSE(box.overlaps(beside));
  CHECK(box.overlaps(beside, 0.1));
}
