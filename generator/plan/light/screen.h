// screen: a solid as one place sees it, made once for the many ways of light to that place.
#pragma once
#include "base/geometry.h"
#include "plan/light/obstacles.h"

namespace loamsheet {

// The slopes x/z and y/z of all ways from a place up to a box of space. Empty where it lies lower.
Box slopes_to(const Space&, const Position& from);

class Screen {
 public:
  Screen(const Solid&, const Position& place);

  // Whether it stands in the straight way from the place to what lies at these offsets from it,
  // millimetres, z above 0. More than skin deep.
  bool hides(const Position& way) const {
    const Point slope{way.x / way.z, way.y / way.z};
    return slope.x >= slopes_.left && slope.x <= slopes_.right && slope.y >= slopes_.bottom &&
           slope.y <= slopes_.top && (solid_->rod ? rod_hides(way) : box_hides(way));
  }

  // Whether it may hide any of the ways of these slopes x/z and y/z.
  bool may_hide(const Box& slopes) const {
    return slopes_.overlaps(slopes) && (!solid_->rod || near_axis(slopes));
  }

 private:
  bool near_axis(const Box& slopes) const;
  bool rod_hides(const Position& way) const;
  bool box_hides(const Position& way) const;

  const Solid* solid_;
  Box slopes_;              // of all ways that it may hide
  Position start_;          // of a rod, from the place; the place, from the middle of a box
  Position along_, aside_;  // of a rod: to its other end; square to that and to its start
  double length_square_ = 0, start_along_ = 0;
};

}  // namespace loamsheet
