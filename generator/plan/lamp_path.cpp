#include "plan/lamp_path.h"

#include "plan/climate_constants.h"

namespace loamsheet {
namespace {

double cover_for_light(const Enclosure& tank) {
  const bool clear = tank.walls.material == "glass" || tank.walls.material == "acrylic";
  return clear ? constants::through_clear_cover : 0;
}

// Where the way down crosses the top.
Point crossing(double top, const Position& from, const Position& to) {
  const double t = (from.z - top) / (from.z - to.z);
  return {from.x + t * (to.x - from.x), from.y + t * (to.y - from.y)};
}

bool is_mesh_above(const Opening& o, Point at) {
  return o.at == Opening::Where::top && !o.door && o.gross.v > 0 &&
         (!o.over || o.over->contains(at));
}

// An opening smaller than what it covers, or anywhere in the top, is met as often as its area says.
double met(const Opening& o, const Enclosure& tank) {
  const double covered = o.over ? o.over->width() * o.over->height() / 1e6 : area(tank.footprint).v;
  return covered > o.gross.v ? o.gross.v / covered : 1;
}

double let_through(const Enclosure& tank, const Position& from, const Position& to, double cover) {
  if (from.z <= tank.height.v || to.z >= tank.height.v) return 1;
  const Point at = crossing(tank.height.v, from, to);
  double shut = 1, open = 0;
  for (const Opening& o : tank.openings) {
    if (!is_mesh_above(o, at)) continue;
    const double here = shut * met(o, tank);
    open += here * (o.free / o.gross);
    shut -= here;
  }
  return open + shut * cover;
}

}  // namespace

double light_let_through(const Enclosure& tank, const Position& from, const Position& to) {
  return let_through(tank, from, to, cover_for_light(tank));
}

double uv_let_through(const Enclosure& tank, const Position& from, const Position& to) {
  return let_through(tank, from, to, 0);
}

}  // namespace loamsheet
