#include "plan/light/shade.h"
#include "plan/light/constants.h"

#include <algorithm>
#include <cmath>

namespace loamsheet {
namespace {

// The share of the way from `from` to `to` that lies inside a sphere of radius 1 around the origin.
double share_inside(const Position& from, const Position& to) {
  const double x = to.x - from.x, y = to.y - from.y, z = to.z - from.z;
  const double a = x * x + y * y + z * z;
  const double b = from.x * x + from.y * y + from.z * z;
  const double c = from.x * from.x + from.y * from.y + from.z * from.z - 1;
  const double square = b * b - a * c;
  if (square <= 0 || a <= 0) return 0;
  const double root = std::sqrt(square);
  const double enters = std::max(0.0, (-b - root) / a), leaves = std::min(1.0, (-b + root) / a);
  return std::max(0.0, leaves - enters);
}

Position seen_from(const Crown& crown, const Position& p) {
  return {(p.x - crown.middle.x) / crown.radius, (p.y - crown.middle.y) / crown.radius,
          (p.z - crown.middle.z) / crown.half_height};
}

}  // namespace

std::optional<Position> lamp_middle(const Build& build) {
  Position middle;
  double sum = 0;
  for (const Lamp& lamp : build.lamps) {
    const double photons = lamp.flux * lamp.photons_per_lux;
    middle.x += lamp.at.x * photons, middle.y += lamp.at.y * photons;
    middle.z += lamp.at.z * photons;
    sum += photons;
  }
  if (sum <= 0) return std::nullopt;
  return Position{middle.x / sum, middle.y / sum, middle.z / sum};
}

double light_left(const Position& place, const Crown& crown, const Position& lamp) {
  // The way to the lamp leads past most crowns.
  const double x = lamp.x - place.x, y = lamp.y - place.y, z = lamp.z - place.z;
  const double beside = x * (crown.middle.y - place.y) - y * (crown.middle.x - place.x);
  if (beside * beside > crown.radius * crown.radius * (x * x + y * y)) return 1;
  const double share = share_inside(seen_from(crown, place), seen_from(crown, lamp));
  if (share <= 0) return 1;
  const double way = share * std::sqrt(x * x + y * y + z * z);
  const double density = constants::leaf_area_index / (2 * crown.half_height);
  return std::exp(-constants::extinction * density * way);
}

double light_left(const Crown& plant, const Crown& other, const Position& lamp) {
  return may_shade(other, plant) ? light_left(plant.middle, other, lamp) : 1;
}

}  // namespace loamsheet
