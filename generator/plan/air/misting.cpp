#include "plan/air/misting.h"

#include <algorithm>
#include <cmath>

#include "base/middle.h"
#include "plan/air/water_constants.h"

namespace loamsheet {
namespace {

constexpr double hair = 1e-9;  // less than any misting, more than rounding

// Roots take in damp ground: often at first, then as the animal wants it.
constexpr Routine humid{
    .first = 3,
    .later = 1,
    .none_before = 0,
    .steady_until = 14,
    .tapered_by = 28,
    .refill = {0.60},
    .first_level = {1.0},
    .later_level = {0.75},
    .most = {10},
};
constexpr Routine temperate{
    .first = 2,
    .later = 0.5,
    .none_before = 0,
    .steady_until = 14,
    .tapered_by = 28,
    .refill = {0.50},
    .first_level = {0.9},
    .later_level = {0.6},
    .most = {10},
};
// Damp below for the burrow, dry on top.
constexpr Routine burrowing{
    .first = 0.2,
    .later = 0.2,
    .none_before = 7,
    .steady_until = 7,
    .tapered_by = 7,
    .refill = {0.40},
    .first_level = {0.5},
    .later_level = {0.5},
    .most = {3},
};
// Succulents are left dry for a week, so that broken roots heal.
constexpr Routine arid{
    .first = 1.0 / 12,
    .later = 1.0 / 12,
    .none_before = 7,
    .steady_until = 7,
    .tapered_by = 7,
    .refill = {0.20},
    .first_level = {0},
    .later_level = {0},
    .most = {0.2},
};

const Routine& base_routine(BuildKind kind) {
  switch (kind) {
    case BuildKind::temperate:
      return temperate;
    case BuildKind::arid:
      return arid;
    case BuildKind::burrowing:
      return burrowing;
    default:
      return humid;
  }
}

bool wants_wet_air(const KeptAnimal& animal) {
  const auto& humidity = animal.facts.humidity;
  return humidity && humidity->value.low >= constants::wet_air;
}

// From 0 on the last steady day to 1 on the day from which the regime holds.
double tapered(const Routine& routine, int day) {
  if (day <= routine.steady_until) return 0;
  if (day >= routine.tapered_by) return 1;
  return static_cast<double>(day - routine.steady_until) /
         (routine.tapered_by - routine.steady_until);
}

double rate_on(const Routine& routine, int day) {
  return routine.first + (routine.later - routine.first) * tapered(routine, day);
}

double mistings_before(const Routine& routine, int day) {
  double sum = 0;
  for (int d = routine.none_before; d < day; ++d) sum += rate_on(routine, d);
  return sum;
}

// Rounded up, so that the first misting comes on the first day.
int whole(double mistings) {
  return static_cast<int>(std::ceil(mistings - hair));
}

}  // namespace

Routine routine_for(const Build& build) {
  Routine routine = base_routine(build.kind);
  const bool wet = build.kind == BuildKind::humid &&
                   std::any_of(build.kept.begin(), build.kept.end(), wants_wet_air);
  if (wet) routine.later = 2;
  return routine;
}

int mistings_on(const Routine& routine, int day) {
  return whole(mistings_before(routine, day + 1)) - whole(mistings_before(routine, day));
}

int mistings_from(const Routine& routine, int day, int days) {
  return static_cast<int>(std::lround(rate_on(routine, day + days / 2)));
}

Fraction level_on(const Routine& routine, int day) {
  return routine.first_level + (routine.later_level - routine.first_level) * tapered(routine, day);
}

Litres per_stroke(const Misting& misting) {
  if (misting.by_hand) return {middle(misting.pull.range)};
  return {misting.nozzles * middle(misting.flow.range) / 60};
}

namespace {

// So many mistings, each as short as gives the amount; one step less where that would be too much.
Spray in_times(const Misting& misting, Litres amount, Litres most, int times) {
  const double stroke = per_stroke(misting).v;
  const double exact = amount.v / (times * stroke);
  const bool coarse = !misting.by_hand && exact >= constants::long_burst;
  const double step = coarse ? constants::timer_step : 1;
  const double up = std::ceil(exact / step - hair) * step;
  const double each = up * times * stroke <= most.v + hair ? up : up - step;
  return {times, each, {each * times * stroke}};
}

}  // namespace

Spray spray(const Misting& misting, Litres wanted, Litres most, int mistings) {
  const double stroke = per_stroke(misting).v;
  const double shortest = misting.by_hand ? constants::fewest_pulls : constants::shortest_burst;
  const double least = shortest * stroke;
  if (mistings == 0 || stroke <= 0 || wanted.v <= 0 || most.v < least - hair) return {};
  const double limit = std::min(std::max(wanted.v, least), most.v);
  const int times = std::min(mistings, static_cast<int>(limit / least + hair));
  const Spray usual = in_times(misting, {limit}, most, times);
  for (int fewer = times; fewer > 0; --fewer) {
    const Spray enough = in_times(misting, {limit}, most, fewer);
    if (enough.amount.v >= limit - hair) return enough;
  }
  return usual;
}

}  // namespace loamsheet
