#include "check/position.h"

#include <cmath>

namespace loamsheet {
namespace {

constexpr double slack = 1e-6;  // mm

// On the floor or on its edge, where `contains` may fall on either side.
bool inside(const Region& floor, Point p) {
  const Point middle = centroid(floor);
  const double from_middle = std::hypot(p.x - middle.x, p.y - middle.y);
  if (from_middle <= slack) return true;
  const double k = slack / from_middle;
  return contains(floor, p) ||
         contains(floor, {p.x + (middle.x - p.x) * k, p.y + (middle.y - p.y) * k});
}

}  // namespace

Position position_of(const Node& n, std::string_view key) {
  const Node* at = n.find(key);
  if (!at) return {};
  return {at->number("[0]").value_or(0), at->number("[1]").value_or(0),
          at->number("[2]").value_or(0)};
}

void check_position(Checking& c, const Node& n, const std::string& key, const std::string& what) {
  const Node* at = n.find(key);
  const Enclosure& e = c.build.enclosure;
  if (!at || e.footprint.corners.empty()) return;
  const Point p{at->number("[0]").value_or(0), at->number("[1]").value_or(0)};
  const double z = at->number("[2]").value_or(0);
  if (!inside(e.footprint, p)) {
    const Box box = extent(e.footprint);
    c.error(at->where, what + " is outside the tank's floor",
            "a place from " + length_text({box.left}) + ", " + length_text({box.bottom}) + " to " +
                length_text({box.right}) + ", " + length_text({box.top}) +
                ", within the tank's shape");
  }
  if (z < 0 || z > e.height.v) {
    c.error(at->where, what + " is not between the floor and the top of the tank",
            "a height from 0 cm to " + length_text({e.height.v}));
  }
}

}  // namespace loamsheet
