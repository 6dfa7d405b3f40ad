#include "plan/air/vents.h"
#include "plan/air/constants.h"

#include <algorithm>
#include <cmath>

namespace loamsheet {
namespace {

constexpr double gravity = 9.81;
constexpr double kelvin = 273.15;

double wall_width(const Enclosure& tank, Opening::Where wall) {
  const bool end = wall == Opening::Where::left || wall == Opening::Where::right;
  return (end ? tank.depth.v : tank.width.v) / 1000;
}

Vent vent_of(const Enclosure& tank, const Opening& o) {
  const double height = tank.height.v / 1000;
  if (o.at == Opening::Where::top) return {height, 0, o.free.v};
  const double foot = o.lower_edge.value_or(Millimetres{}).v / 1000;
  const double room = std::max(0.0, height - foot);
  const double tall = o.kind->swings ? room : std::min(room, o.gross.v / wall_width(tank, o.at));
  return {foot + tall / 2, tall, o.free.v};
}

// The openings of one half of the height, as one.
struct Group {
  double area = 0, moment = 0;
  void add(const Vent& v) { area += v.area, moment += v.area * v.middle; }
  double middle() const { return moment / area; }
};

double stack(const std::vector<Vent>& all, double buoyancy) {
  const auto [lowest, highest] = std::minmax_element(
      all.begin(), all.end(), [](const Vent& a, const Vent& b) { return a.middle < b.middle; });
  const double between = (lowest->middle + highest->middle) / 2;
  Group low, high;
  for (const Vent& v : all) (v.middle < between ? low : high).add(v);
  if (low.area <= 0 || high.area <= 0) return 0;
  const double both = 1 / std::hypot(1 / low.area, 1 / high.area);
  const double rise = high.middle() - low.middle();
  return constants::discharge * both * std::sqrt(2 * buoyancy * rise);
}

double alone(const Vent& v, double buoyancy) {
  if (v.tall > 0) return constants::discharge / 3 * v.area * std::sqrt(buoyancy * v.tall);
  return constants::level_exchange * std::pow(v.area, 1.25) * std::sqrt(buoyancy);
}

}  // namespace

std::vector<Vent> vents(const Enclosure& tank) {
  std::vector<Vent> all;
  for (const Opening& o : tank.openings) {
    if (o.free.v > 0) all.push_back(vent_of(tank, o));
  }
  return all;
}

double vent_flow(const std::vector<Vent>& all, double warmer, Celsius room) {
  if (all.empty()) return 0;
  const double difference = std::max(std::fabs(warmer), constants::least_difference);
  const double buoyancy = gravity * difference / (room.v + kelvin);
  double sum = 0;
  for (const Vent& v : all) sum += alone(v, buoyancy);
  return std::max(sum, stack(all, buoyancy));
}

}  // namespace loamsheet
