#include "data/climate_json.h"

namespace loamsheet {
namespace {

// Always both ends, and a share in per cent.
Json ends(double low, double high) {
  return Json::array({figure(low), figure(high)});
}

Json state(const AirState& s) {
  return {{"temperature_c", ends(s.temperature.low.v, s.temperature.high.v)},
          {"humidity_pct", ends(s.humidity.low.v * 100, s.humidity.high.v * 100)},
          {"vent_l_s", ends(s.vent.low, s.vent.high)},
          {"lost_ml_h", ends(s.lost.low.v * 1000, s.lost.high.v * 1000)},
          {"condensed_ml_h", ends(s.condensed.low.v * 1000, s.condensed.high.v * 1000)}};
}

Json season(const Season& s) {
  return {{"day", state(s.day)}, {"night", state(s.night)}};
}

Json watts(const std::optional<double>& w) {
  return w ? figure(*w) : Json(nullptr);
}

}  // namespace

Json air_json(const AirPlan& air) {
  return {{"winter", season(air.winter)}, {"summer", season(air.summer)}};
}

Json heat_json(const HeatPlan& heat) {
  return {{"needed_day_w", watts(heat.needed_day)},
          {"needed_night_w", watts(heat.needed_night)},
          {"fitted_w", figure(heat.fitted)},
          {"kwh_month", figure(heat.kwh_month)},
          {"cost_month",
           heat.cost_month ? Json(static_cast<double>(heat.cost_month->v) / 10000) : Json(nullptr)},
          {"all_off_c", ends(heat.all_off.low.v, heat.all_off.high.v)},
          {"all_on_c", ends(heat.all_on.low.v, heat.all_on.high.v)}};
}

Json readings_json(const std::vector<FirstReading>& readings) {
  Json all = Json::array();
  for (const FirstReading& reading : readings) {
    all.push_back({{"of", reading.of},
                   {"moves_humidity_pct", figure(reading.humidity * 100)},
                   {"moves_temperature_k", figure(reading.warmth)}});
  }
  return all;
}

}  // namespace loamsheet
