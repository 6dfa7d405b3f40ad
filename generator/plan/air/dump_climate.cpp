#include "plan/air/dump_climate.h"

#include "base/text.h"

namespace loamsheet {
namespace {

constexpr int decimals = 3;

std::string ends(std::string_view name, double low, double high) {
  return ' ' + std::string(name) + ' ' + fixed(low, decimals) + ".." + fixed(high, decimals);
}

std::string state(std::string_view when, const AirState& s) {
  return "air " + std::string(when) +
         ends("temperature", s.temperature.low.v, s.temperature.high.v) +
         ends("humidity", s.humidity.low.v, s.humidity.high.v) +
         ends("vent", s.vent.low, s.vent.high) + ends("lost", s.lost.low.v, s.lost.high.v) + '\n';
}

std::string watts(const std::optional<double>& w) {
  return w ? fixed(*w, decimals) : "-";
}

}  // namespace

std::string dump(const AirPlan& air) {
  return state("winter-day", air.winter.day) + state("winter-night", air.winter.night) +
         state("summer-day", air.summer.day) + state("summer-night", air.summer.night);
}

std::string dump(const HeatPlan& heat) {
  return "heat needed-day " + watts(heat.needed_day) + " needed-night " + watts(heat.needed_night) +
         " fitted " + fixed(heat.fitted, decimals) + " W month " + fixed(heat.kwh_month, decimals) +
         " kWh\n";
}

}  // namespace loamsheet
