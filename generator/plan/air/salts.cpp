#include "plan/air/salts.h"
#include "plan/air/water_constants.h"

#include <cmath>

namespace loamsheet {
namespace {

double minerals(const std::string& source) {
  const bool low = source == "reverse-osmosis" || source == "rain";
  return low ? constants::minerals_low : constants::minerals_tap;
}

}  // namespace

bool drains_away(const Build& build) {
  const DrainageLayer& drainage = build.layers.drainage;
  return drainage.kind->keeps_water_off && drainage.outlet->draws;
}

std::optional<int> flush_every(const Build& build, Litres held, Litres a_day) {
  if (build.water_source.empty() || drains_away(build) || a_day.v <= 0) return std::nullopt;
  const double brought = minerals(build.water_source);
  if (brought >= constants::minerals_borne) return 1;
  const double days = (constants::minerals_borne - brought) * held.v / (brought * a_day.v);
  if (days >= constants::substrate_lasts) return std::nullopt;
  return static_cast<int>(std::floor(days)) + 1;
}

}  // namespace loamsheet
