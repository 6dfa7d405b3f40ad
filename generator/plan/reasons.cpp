#include "plan/reasons.h"

#include <algorithm>
#include <cmath>

#include "plan/placement_rules.h"

namespace loamsheet {
namespace {

// From here on a soft rule counts as kept.
constexpr double well_kept = 0.6;

int whole(double v) {
  return static_cast<int>(std::lround(v));
}

Reason light_reason(const Needs& needs, const Site& site) {
  const double ppfd = site.light.ppfd;
  const char* name = ppfd < needs.ppfd.low    ? "light-below"
                     : ppfd > needs.ppfd.high ? "light-above"
                                              : "light-in-band";
  return {
      name,
      {{"light", whole(ppfd)}, {"low", whole(needs.ppfd.low)}, {"high", whole(needs.ppfd.high)}}};
}

Reason humidity_reason(const Needs& needs, const Site& site) {
  const bool enough = humidity_fit(needs, site) >= 1;
  const bool dry = (site.humidity.low + site.humidity.high) / 2 < *needs.humidity;
  const char* name = enough ? "humidity-enough" : dry ? "humidity-short" : "humidity-over";
  return {name, {{"air", site.humidity}, {"least", *needs.humidity}}};
}

const char* habit_name(Habit habit) {
  switch (habit) {
    case Habit::climber:
      return "climber-at-support";
    case Habit::trailer:
      return "trailer-hangs";
    case Habit::creeper:
    case Habit::moss:
      return "creeper-low";
    case Habit::epiphyte:
      return "epiphyte-raised";
    case Habit::tall:
      return "tall-at-back";
    case Habit::low:
      break;
  }
  return "low-in-middle";
}

Reason habit_reason(const Needs& needs, const Site& site) {
  const bool kept = habit_fit(needs, site) >= well_kept;
  return {kept ? habit_name(needs.habit) : "habit-yields", {{"drop", site.drop}}};
}

}  // namespace

std::vector<Reason> reasons(const ToPlace& plant, const Site& site,
                            const std::optional<Choice>& next) {
  std::vector<Reason> all;
  if (plant.fixed) all.push_back({"pinned", {}});
  if (plant.needs.ppfd.high > 0) all.push_back(light_reason(plant.needs, site));
  if (plant.needs.humidity) all.push_back(humidity_reason(plant.needs, site));
  if (!plant.fixed) all.push_back(habit_reason(plant.needs, site));
  if (next) {
    all.push_back({"next-best",
                   {{"fit", Fraction{static_cast<double>(score(plant.needs, site)) / 1e6}},
                    {"next", Fraction{static_cast<double>(next->score) / 1e6}}}});
  }
  return all;
}

}  // namespace loamsheet
