#include "plan/light/lamp_path.h"
#include "plan/light/constants.h"

#include <algorithm>

namespace loamsheet {
namespace {

// Where the way down crosses the top.
Point crossing(double top, const Position& from, const Position& to) {
  const double t = (from.z - top) / (from.z - to.z);
  return {from.x + t * (to.x - from.x), from.y + t * (to.y - from.y)};
}

}  // namespace

LampPath::LampPath(const Enclosure& tank)
    : top_(tank.height.v), cover_(tank.walls.material->clear) {
  for (const Opening& o : tank.openings) {
    if (o.at != Opening::Where::top || o.kind->swings || o.gross.v <= 0) continue;
    const double covered =
        o.over ? o.over->width() * o.over->height() / 1e6 : area(tank.footprint).v;
    meshes_.push_back({o.over, std::min(1.0, o.gross.v / covered), o.free / o.gross});
  }
}

std::optional<double> LampPath::light(const Position& from, const Position& until,
                                      const Position& to) const {
  if (from.z <= top_ || to.z >= top_) return 1;
  const Point a = crossing(top_, from, to), b = crossing(top_, until, to);
  for (const Mesh& mesh : meshes_) {
    if (!mesh.over || !mesh.over->overlaps({a.x, a.y, b.x, b.y})) continue;
    if (!mesh.over->contains(a) || !mesh.over->contains(b)) return std::nullopt;
  }
  return through(a, cover_);
}

double LampPath::through(const Position& from, const Position& to, double cover) const {
  return from.z <= top_ || to.z >= top_ ? 1 : through(crossing(top_, from, to), cover);
}

double LampPath::through(Point at, double cover) const {
  double shut = 1, open = 0;
  for (const Mesh& mesh : meshes_) {
    if (mesh.over && !mesh.over->contains(at)) continue;
    const double here = shut * mesh.met;
    open += here * mesh.open;
    shut -= here;
  }
  return open + shut * cover;
}

}  // namespace loamsheet
