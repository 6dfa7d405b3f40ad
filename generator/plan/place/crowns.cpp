#include "plan/place/crowns.h"

#include <algorithm>

namespace loamsheet {
namespace {

bool casts_shade(Habit habit) {
  return habit != Habit::climber && habit != Habit::creeper && habit != Habit::moss;
}

}  // namespace

Crown crown_of(const Needs& needs, const Site& site) {
  const bool hangs = needs.habit == Habit::trailer && site.drop.v > 0;
  const double room = hangs ? site.drop.v : site.headroom.v;
  const double height = std::clamp(needs.height.high.v, 1.0, std::max(1.0, room));
  Crown crown;
  crown.middle = site.at;
  crown.middle.z += hangs ? -height / 2 : height / 2;
  crown.radius = std::max(1.0, needs.spread.v / 2), crown.half_height = height / 2;
  crown.casts = casts_shade(needs.habit);
  return crown;
}

}  // namespace loamsheet
