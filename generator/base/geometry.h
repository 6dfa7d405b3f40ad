// geometry: plane figures bounded by straight edges and circular arcs, in millimetres, exactly.
// Axes: x to the right, y to the back (away from the viewer of the front).
#pragma once
#include <optional>
#include <vector>

#include "base/units.h"

namespace loamsheet {

struct Point {
  double x = 0, y = 0;
  bool operator==(const Point&) const = default;
};

// An upright box; empty until a point was added.
struct Box {
  double left = 1e300, bottom = 1e300, right = -1e300, top = -1e300;
  void add(Point);
  void add(const Box&);
  bool empty() const { return left > right; }
  double width() const { return empty() ? 0 : right - left; }
  double height() const { return empty() ? 0 : top - bottom; }
  bool contains(Point p, double slack = 0) const {
    return p.x >= left - slack && p.x <= right + slack && p.y >= bottom - slack &&
           p.y <= top + slack;
  }
  bool overlaps(const Box& o, double slack = 0) const {
    return left < o.right + slack && o.left < right + slack && bottom < o.top + slack &&
           o.bottom < top + slack;
  }
};

// A corner of a region and the shape of the edge that leaves it: bulge 0 is straight, otherwise
// the tangent of a quarter of the arc's angle, positive when the arc turns to the left.
struct Vertex {
  Point at;
  double bulge = 0;
};

// A closed figure, corners counter-clockwise. Lengths in millimetres.
struct Region {
  std::vector<Vertex> corners;
};

// The footprints of the spec. Positions as the design fixes them: a bow-front's chord runs from
// (0, 0), its bow stands at negative y; all others have the box's front-left corner at (0, 0).
Region rectangle(Millimetres width, Millimetres depth);
Region bow_front(Millimetres width, Millimetres depth, Millimetres bulge);  // 0 < bulge <= width/2
Region cut_corner(Millimetres side, Millimetres cut);                       // 0 < cut < side
Region hexagon(Millimetres across_flats);
Region circle(Millimetres diameter);
Region polygon(const std::vector<Point>& points);  // either turn; made counter-clockwise

// True when two edges that are not neighbours meet (straight edges only).
bool crosses_itself(const std::vector<Point>& points);

SquareMetres area(const Region&);
Millimetres perimeter(const Region&);
Point centroid(const Region&);  // of a region with area
Box extent(const Region&);
bool contains(const Region&, Point);

// The parts with y <= limit (below), x >= limit (right of), x <= limit (left of).
Region below(const Region&, double limit);
Region right_of(const Region&, double limit);
Region left_of(const Region&, double limit);

// The arc or edge as points no further than `sag` from the true curve, for drawing.
std::vector<Point> outline(const Region&, double sag);

// Where the vertical line at x meets the region: the lowest and highest y, if it does.
std::optional<Range<Millimetres>> reach_at(const Region&, double x);

}  // namespace loamsheet
