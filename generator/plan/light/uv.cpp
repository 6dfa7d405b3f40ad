#include <algorithm>
#include <cmath>

#include "plan/light/light.h"
#include "plan/light/photons.h"
#include "plan/light/screen.h"
#include "plan/light/uv_field.h"

namespace loamsheet {
namespace {

using Table = std::vector<std::pair<Millimetres, double>>;

double inverse_square(const Table::value_type& from, double distance) {
  return from.second * from.first.v * from.first.v / (distance * distance);
}

// Straight between two points of the table on logarithmic scales, or plainly where one is zero.
double between(const Table::value_type& a, const Table::value_type& b, double distance) {
  const bool plain = a.second <= 0 || b.second <= 0;
  const auto place = [&](double near, double here, double far) {
    return (here - near) / (far - near);
  };
  const double t = plain ? place(a.first.v, distance, b.first.v)
                         : place(std::log(a.first.v), std::log(distance), std::log(b.first.v));
  return plain ? a.second + t * (b.second - a.second) : a.second * std::pow(b.second / a.second, t);
}

// Outside the table the inverse square of its nearest point stands in: common practice.
double in_open_air(const Table& table, double distance) {
  if (distance <= table.front().first.v) return inverse_square(table.front(), distance);
  const auto after = std::find_if(table.begin(), table.end(),
                                  [&](const auto& row) { return row.first.v >= distance; });
  if (after == table.end()) return inverse_square(table.back(), distance);
  return between(*std::prev(after), *after, distance);
}

// The point of the lamp that is nearest: a bar shines along its whole length.
Position nearest_point(const Lamp& lamp, const Position& at) {
  const bool line = lamp.kind->shines == LampKind::Shines::line;
  const double half = line ? lamp.length.v / 2 : 0;
  return {std::clamp(at.x, lamp.at.x - half, lamp.at.x + half), lamp.at.y, lamp.at.z};
}

}  // namespace

UvField::UvField(const Build& build)
    : path_(build.enclosure), solids_(solids_in(build)), lamps_(build.lamps) {}

UvField UvField::under(std::vector<Lamp> lamps) const {
  UvField other = *this;
  other.lamps_ = std::move(lamps);
  return other;
}

double UvField::from_lamp(const Lamp& lamp, const Position& at) const {
  const Position from = nearest_point(lamp, at);
  if (lamp.uv_index.empty() || from.z <= at.z) return 0;
  const Position way{from.x - at.x, from.y - at.y, from.z - at.z};
  const auto between = [&](const Solid& s) { return Screen(s, at).hides(way) && !holds(s, at); };
  if (std::any_of(solids_.begin(), solids_.end(), between)) return 0;
  const double distance = std::hypot(from.x - at.x, from.y - at.y, from.z - at.z);
  const double cosine = (from.z - at.z) / distance;
  const double aside = std::pow(cosine, lamp.beam > 0 ? beam_exponent(lamp.beam) : 1);
  return in_open_air(lamp.uv_index, distance) * aside * cosine * path_.uv(from, at);
}

double UvField::at(const Position& at) const {
  double sum = 0;
  for (const Lamp& lamp : lamps_) sum += from_lamp(lamp, at);
  return sum;
}

}  // namespace loamsheet
