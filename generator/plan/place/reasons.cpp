#include "plan/place/reasons.h"

#include <algorithm>
#include <cmath>
#include <utility>

#include "plan/place/soft_rules.h"

namespace loamsheet {
namespace {

// From here on a soft rule counts as kept.
constexpr double well_kept = 0.6;

int whole(double v) {
  return static_cast<int>(std::lround(v));
}

const char* light_name(const Needs& needs, double ppfd) {
  if (ppfd < needs.ppfd.low) return "light-below";
  return ppfd > needs.ppfd.high ? "light-above" : "light-in-band";
}

const char* air_name(const Needs& needs, const Site& site) {
  if (humidity_fit(needs, site) >= 1) return "air-enough";
  const bool dry = (site.humidity.low + site.humidity.high) / 2 < *needs.humidity;
  return dry ? "air-short" : "air-over";
}

using ReasonArgs = Args;

ReasonArgs light_args(const Needs& needs, const Site& site) {
  return {{"light", whole(site.light.ppfd)},
          {"low", whole(needs.ppfd.low)},
          {"high", whole(needs.ppfd.high)}};
}

ReasonArgs air_args(const Needs& needs, const Site& site) {
  return {{"air", site.humidity}, {"least", *needs.humidity}};
}

// Light and air in one sentence, as far as it is known what the plant wants.
std::optional<Reason> gets_reason(const Needs& needs, const Site& site) {
  const bool light = needs.ppfd.high > 0;
  if (!light && !needs.humidity) return std::nullopt;
  if (!light) return Reason{air_name(needs, site), air_args(needs, site)};
  Reason reason{light_name(needs, site.light.ppfd), light_args(needs, site)};
  if (!needs.humidity) return reason;
  reason.name += std::string("-") + air_name(needs, site);
  for (auto& slot : air_args(needs, site)) reason.args.push_back(std::move(slot));
  return reason;
}

const char* habit_name(Habit habit) {
  switch (habit) {
    case Habit::climber:
      return "climber-at-support";
    case Habit::trailer:
      return "trailer-hangs";
    case Habit::creeper:
      return "creeper-low";
    case Habit::moss:
      return "moss-low";
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
  if (kept && needs.focal) return {"focal-off-centre", {}};
  return {kept ? habit_name(needs.habit) : "habit-yields", {{"drop", site.drop}}};
}

// The soft rule that the next best place keeps worse by most; shade when none does.
const char* costs(const Needs& needs, const Site& here, const Site& next) {
  using SoftRule = double (*)(const Needs&, const Site&);
  constexpr std::pair<SoftRule, const char*> rules[] = {{light_fit, "next-best-light"},
                                                        {humidity_fit, "next-best-air"},
                                                        {habit_fit, "next-best-habit"},
                                                        {headroom_fit, "next-best-headroom"}};
  const char* name = "next-best";
  double most = 0.01;
  for (const auto& [rule, called] : rules) {
    const double lost = rule(needs, here) - rule(needs, next);
    if (lost > most) most = lost, name = called;
  }
  return name;
}

Reason next_reason(const Needs& needs, const Weighed& here, const Weighed& next) {
  const bool alike = std::lround(here.fit * 100) == std::lround(next.fit * 100);  // as printed
  return {alike ? "next-best-alike" : costs(needs, here.site, next.site),
          {{"fit", Fraction{here.fit}},
           {"next", Fraction{next.fit}},
           {"x", Millimetres{next.site.at.x}},
           {"y", Millimetres{next.site.at.y}},
           {"z", Millimetres{next.site.at.z}}}};
}

}  // namespace

std::vector<Reason> reasons(const ToPlace& plant, const Weighed& here,
                            const std::optional<Weighed>& next) {
  std::vector<Reason> all;
  if (plant.fixed) all.push_back({"pinned", {}});
  if (auto gets = gets_reason(plant.needs, here.site)) all.push_back(std::move(*gets));
  if (!plant.fixed) all.push_back(habit_reason(plant.needs, here.site));
  if (next) all.push_back(next_reason(plant.needs, here, *next));
  return all;
}

}  // namespace loamsheet
