#include "plan/light/lamp_remedy.h"
#include "plan/light/constants.h"

#include <algorithm>
#include <cmath>

#include "base/named.h"

namespace loamsheet {
namespace {

using MendHow = LampMend::Kind;

constexpr double most_times = 4;

// The steps of a kind of change: tried first, and the finest that a hand sets.
struct Strides {
  double coarse, fine;
};

Strides steps_of(MendHow kind) {
  switch (kind) {
    case MendHow::run_longer:
    case MendHow::run_shorter:
      return {2, 0.5};
    case MendHow::stronger:
    case MendHow::weaker:
      return {0.4, 0.05};
    default:
      return {40, 5};
  }
}

double height_limit(const Enclosure& tank, const Lamp& lamp, bool lower) {
  const double top = tank.height.v;
  const bool outside = lamp.at.z > top;
  if (lower) {
    return lamp.at.z -
           (outside ? top + constants::lamp_on_mesh.v : top * constants::lowest_in_tank);
  }
  return outside ? constants::lamp_lift.v : top - lamp.at.z;
}

// By how much a lamp may be changed at most.
double limit_of(const Enclosure& tank, const Lamp& lamp, MendHow kind) {
  const Box box = extent(tank.footprint);
  switch (kind) {
    case MendHow::run_longer:
      return constants::longest_day - lamp.hours;
    case MendHow::run_shorter:
      return lamp.hours - constants::shortest_day;
    case MendHow::hang_lower:
    case MendHow::hang_higher:
      return height_limit(tank, lamp, kind == MendHow::hang_lower);
    case MendHow::move_left:
      return lamp.at.x - lamp.length.v / 2 - box.left;
    case MendHow::move_right:
      return box.right - lamp.at.x - lamp.length.v / 2;
    case MendHow::move_forward:
      return lamp.at.y - box.bottom;
    case MendHow::move_back:
      return box.top - lamp.at.y;
    case MendHow::stronger:
      return most_times - 1;
    case MendHow::weaker:
      return 0.9;
  }
  return 0;
}

// A change of strength is kept as a factor, all others as an amount.
LampMend mend_by(MendHow kind, size_t lamp, double amount) {
  if (kind == MendHow::stronger) return {kind, lamp, 1 + amount};
  if (kind == MendHow::weaker) return {kind, lamp, 1 - amount};
  return {kind, lamp, amount};
}

struct MendSearch {
  const Build& build;
  const MendWish& wanted;

  bool works(MendHow kind, size_t lamp, long fine_steps) const {
    const double amount = double(fine_steps) * steps_of(kind).fine;
    return wanted.holds(mended(build.lamps, mend_by(kind, lamp, amount)));
  }

  // In fine steps; nothing when no change up to the limit works.
  std::optional<long> least(MendHow kind, size_t lamp) const {
    const Strides steps = steps_of(kind);
    const long stride = std::lround(steps.coarse / steps.fine);
    const double limit = limit_of(build.enclosure, build.lamps[lamp], kind);
    const long most = static_cast<long>(std::floor(limit / steps.fine + 1e-9));
    for (long high = std::min(stride, most), low = 0; high > low;
         low = high, high = std::min(high + stride, most)) {
      if (works(kind, lamp, high)) return halved(kind, lamp, {low, high});
    }
    return std::nullopt;
  }

  // `high` works, `low` does not.
  long halved(MendHow kind, size_t lamp, Range<long> between) const {
    while (between.high - between.low > 1) {
      const long middle = (between.low + between.high) / 2;
      (works(kind, lamp, middle) ? between.high : between.low) = middle;
    }
    return between.high;
  }
};

std::string name_of(MendHow kind, bool uv) {
  using enum MendHow;
  static constexpr For<MendHow, const char*> names[] = {
      {run_longer, "run-longer"},     {run_shorter, "run-shorter"}, {hang_lower, "hang-lower"},
      {hang_higher, "hang-higher"},   {move_left, "move-left"},     {move_right, "move-right"},
      {move_forward, "move-forward"}, {move_back, "move-back"},     {stronger, "get-stronger"},
      {weaker, "get-weaker"}};
  const std::string name = what_of(names, kind);
  return uv && name.starts_with("get-") ? name + "-uv" : name;
}

}  // namespace

std::optional<LampMend> least_mend(const Build& build, const MendWish& wanted) {
  const MendSearch search{build, wanted};
  for (const MendHow kind : wanted.kinds) {
    std::optional<LampMend> best;
    long steps = 0;
    for (size_t i = 0; i < build.lamps.size(); ++i) {
      if (!wanted.counts(build.lamps[i])) continue;
      const auto least = search.least(kind, i);
      if (!least || (best && *least >= steps)) continue;
      steps = *least;
      best = mend_by(kind, i, double(steps) * steps_of(kind).fine);
    }
    if (best) return best;
  }
  return std::nullopt;
}

Lamps mended(Lamps lamps, const LampMend& mend) {
  Lamp& lamp = lamps[mend.lamp];
  switch (mend.kind) {
    case MendHow::run_longer:
      lamp.hours += mend.by;
      break;
    case MendHow::run_shorter:
      lamp.hours -= mend.by;
      break;
    case MendHow::hang_lower:
      lamp.at.z -= mend.by;
      break;
    case MendHow::hang_higher:
      lamp.at.z += mend.by;
      break;
    case MendHow::move_left:
      lamp.at.x -= mend.by;
      break;
    case MendHow::move_right:
      lamp.at.x += mend.by;
      break;
    case MendHow::move_forward:
      lamp.at.y -= mend.by;
      break;
    case MendHow::move_back:
      lamp.at.y += mend.by;
      break;
    case MendHow::stronger:
    case MendHow::weaker:
      lamp.flux *= mend.by;
      for (auto& row : lamp.uv_index) row.second *= mend.by;
  }
  return lamps;
}

Args mend_args(const LampMend& mend, const Lamps& lamps) {
  const Lamp lamp = mended(lamps, mend)[mend.lamp];
  return {{"change", name_of(mend.kind, lamp.flux <= 0)},
          {"lamp", lamp.id},
          {"by", Millimetres{mend.by}},
          {"hours", lamp.hours},
          {"z", Millimetres{lamp.at.z}},
          {"x", Millimetres{lamp.at.x}},
          {"y", Millimetres{lamp.at.y}},
          {"times", mend.by},
          {"flux", static_cast<int>(std::lround(lamp.flux))}};
}

}  // namespace loamsheet
