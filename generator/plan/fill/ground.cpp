#include "plan/fill/ground.h"

namespace loamsheet {
namespace {

// The footprint in front of the background.
Region open_floor(const Enclosure& enclosure) {
  if (!enclosure.background) return enclosure.footprint;
  const double back = extent(enclosure.footprint).top;
  return below(enclosure.footprint, back - enclosure.background->thickness.v);
}

// The x to the left of which the region has `wanted` area. Halving 60 times leaves less than a
// rounding error of any tank.
double cut_with_area_left(const Region& region, SquareMetres wanted) {
  const Box box = extent(region);
  double low = box.left, high = box.right;
  for (int i = 0; i < 60; ++i) {
    const double middle = (low + high) / 2;
    (area(left_of(region, middle)) < wanted ? low : high) = middle;
  }
  return (low + high) / 2;
}

}  // namespace

Ground ground(const Build& build) {
  const Region& footprint = build.enclosure.footprint;
  const Region floor = open_floor(build.enclosure);
  if (!build.water_area) return {floor, {}};
  const SquareMetres share = area(footprint) * build.water_area->floor.v;
  if (build.water_area->side == WaterArea::Side::left) {
    const double cut = cut_with_area_left(footprint, share);
    return {right_of(floor, cut), left_of(floor, cut)};
  }
  const double cut = cut_with_area_left(footprint, area(footprint) - share);
  return {left_of(floor, cut), right_of(floor, cut)};
}

Millimetres background_length(const Enclosure& enclosure) {
  if (!enclosure.background) return {};
  const SquareMetres strip = area(enclosure.footprint) - area(open_floor(enclosure));
  return {strip.v * 1e6 / enclosure.background->thickness.v};
}

}  // namespace loamsheet
