#include "check/footprint.h"

#include "base/text.h"

namespace loamsheet {
namespace {

Millimetres measure(const Node& n, std::string_view key) {
  return {n.number(key).value_or(0)};
}

Region bow(Checking& c, const Node& n) {
  const Millimetres width = measure(n, "width"), bulge = measure(n, "bulge");
  if (bulge * 2 > width) {
    c.error(place_of(n, "bulge"),
            "the bow (" + length_text({bulge.v}) +
                ") stands out further than a "
                "half circle over the front would",
            "at most " + length_text({width.v / 2}) + ", half of the width");
    return {};
  }
  return bow_front(width, measure(n, "depth"), bulge);
}

Region corner(Checking& c, const Node& n) {
  const Millimetres side = measure(n, "width"), cut = measure(n, "cut");
  if (cut >= side) {
    c.error(place_of(n, "cut"),
            "the cut (" + length_text({cut.v}) + ") leaves nothing of the side (" +
                length_text({side.v}) + ")",
            "less than " + length_text({side.v}));
    return {};
  }
  return cut_corner(side, cut);
}

std::vector<Point> points_of(const Node& n) {
  std::vector<Point> points;
  const Node* list = n.find("points");
  for (const Node& p : list ? list->items : std::vector<Node>{}) {
    points.push_back({p.number("[0]").value_or(0), p.number("[1]").value_or(0)});
  }
  return points;
}

// Reports the first corner that comes again right after itself.
bool repeats(Checking& c, const Node& n, const std::vector<Point>& points) {
  for (size_t i = 0; i < points.size(); ++i) {
    const size_t next = (i + 1) % points.size();
    if (!(points[i] == points[next])) continue;
    c.error(n.find("points")->items[next].where,
            "corner " + std::to_string(next + 1) + " is the same as the one before it",
            "each corner once", "the outline closes itself; do not repeat its first corner");
    return true;
  }
  return false;
}

void move_to_origin(Checking& c, const Node& n, std::vector<Point>& points) {
  Box box;
  for (const Point& p : points) box.add(p);
  if (box.left == 0 && box.bottom == 0) return;
  for (Point& p : points) p = {p.x - box.left, p.y - box.bottom};
  c.error({.severity = Severity::warning,
           .where = place_of(n, "points"),
           .message = "the outline starts at " + length_text({box.left}) + ", " +
                      length_text({box.bottom}) + " and was moved to the front-left corner",
           .expected = "a smallest x and a smallest y of 0 cm",
           .hint = "all other positions are measured from that corner"});
}

constexpr double smallest_side = 100;  // mm, as of the other shapes

Region outlined(Checking& c, const Node& n) {
  std::vector<Point> points = points_of(n);
  if (repeats(c, n, points)) return {};
  if (crosses_itself(points)) {
    c.error(place_of(n, "points"), "the outline crosses itself",
            "corners in the order in which they follow each other along the wall");
    return {};
  }
  Box box;
  for (const Point& p : points) box.add(p);
  if (box.width() < smallest_side || box.height() < smallest_side) {
    c.error(
        place_of(n, "points"),
        "the outline is only " + length_text({box.width()}) + " by " + length_text({box.height()}),
        "at least 10 cm each way");
    return {};
  }
  move_to_origin(c, n, points);
  return polygon(points);
}

}  // namespace

Floor floor_of(Checking& c, const Node& n) {
  const OneOf<FloorShape> shape = n.text("shape").value_or("");
  switch (shape->shape) {
    case Shape::rectangle:
      return {shape, rectangle(measure(n, "width"), measure(n, "depth"))};
    case Shape::bow_front:
      return {shape, bow(c, n)};
    case Shape::corner:
      return {shape, corner(c, n)};
    case Shape::hexagon:
      return {shape, hexagon(measure(n, "width"))};
    case Shape::round:
      return {shape, circle(measure(n, "width"))};
    case Shape::outline:
      return {shape, outlined(c, n)};
  }
  return {};
}

}  // namespace loamsheet
